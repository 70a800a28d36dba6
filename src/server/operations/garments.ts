import { Type } from 'typebox';
import type { PictureBox } from '../../wardrobe/words/reading.ts';
import { garment, garmentImportAnswer, twoGarments } from '../schemas/answers.ts';
import { byId, exact, name } from '../schemas/basics.ts';
import { garmentChanges, garmentIds, photoId, versionsById } from '../schemas/garment.ts';
import { countOf, listOf } from './answers.ts';
import { LOOKING, REFUSED } from './refusals.ts';
import { change, look, removal, takeTable } from './usual.ts';

const tags = ['garments'];
const share = Type.Number({ minimum: 0, maximum: 1 });
const box = exact({ left: share, top: share, right: share, bottom: share });
const several = { ids: garmentIds, versions: Type.Optional(versionsById) };

export const garmentOperations = {
	listGarments: {
		method: 'GET',
		url: '/api/garments',
		schema: {
			operationId: 'listGarments',
			tags,
			summary: 'Every garment, whatever its place, with its colours',
			response: { 200: listOf(garment), ...LOOKING },
		},
	},
	getGarment: look('getGarment', '/api/garments/:id', tags, 'One garment with its colours', garment),
	addGarment: {
		method: 'POST',
		url: '/api/garments',
		schema: {
			operationId: 'addGarment',
			tags,
			summary: 'Add a garment',
			body: exact({ name, photoIds: Type.Optional(Type.Array(photoId, { maxItems: 20 })) }),
			response: { 201: garment, ...REFUSED },
		},
	},
	changeGarment: change('changeGarment', '/api/garments/:id', tags, 'Change parts of a garment', {
		body: garmentChanges,
		changed: garment,
	}),
	changeGarments: {
		method: 'PATCH',
		url: '/api/garments',
		schema: {
			operationId: 'changeGarments',
			tags,
			summary: 'Change several garments alike',
			body: exact({ ...several, changes: Type.Partial(garmentChanges, { additionalProperties: false }) }),
			response: { 200: countOf('changed', 'So many were changed.'), ...REFUSED },
		},
	},
	removeGarment: removal('removeGarment', '/api/garments/:id', tags, 'Put a garment in the bin'),
	removeGarments: {
		method: 'DELETE',
		url: '/api/garments',
		schema: {
			operationId: 'removeGarments',
			tags,
			summary: 'Put several garments in the bin',
			body: exact(several),
			response: { 200: countOf('removed', 'So many went to the bin.'), ...REFUSED },
		},
	},
	mergeGarments: {
		method: 'POST',
		url: '/api/garments/merge',
		schema: {
			operationId: 'mergeGarments',
			tags,
			summary: 'Make one garment of several entries of it',
			body: exact(several),
			response: { 200: garment, ...REFUSED },
		},
	},
	splitGarment: {
		method: 'POST',
		url: '/api/garments/:id/split',
		schema: {
			operationId: 'splitGarment',
			tags,
			summary: 'Cut a photo that shows two garments in two',
			params: byId,
			body: exact({
				photoId,
				boxes: Type.Unsafe<[PictureBox, PictureBox]>(Type.Array(box, { minItems: 2, maxItems: 2 })),
			}),
			response: { 200: twoGarments, ...REFUSED },
		},
	},
	partGarment: {
		method: 'POST',
		url: '/api/garments/:id/part',
		schema: {
			operationId: 'partGarment',
			tags,
			summary: 'Give a photo to another garment',
			params: byId,
			body: exact({ photoId }),
			response: { 200: twoGarments, ...REFUSED },
		},
	},
	importGarments: takeTable('importGarments', '/api/garments/import', tags, 'Garments', garmentImportAnswer),
} as const;
