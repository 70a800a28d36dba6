import { Type } from 'typebox';
import type { PictureBox } from '../../wardrobe/words/reading.ts';
import { garment, garmentImportAnswer, twoGarments } from '../schemas/answers.ts';
import { exact, name } from '../schemas/basics.ts';
import { garmentChanges, garmentIds, photoId, versionsById } from '../schemas/garment.ts';
import { countOf, listOf } from './answers.ts';
import { add, get, named, patch, post, remove, removeEntry, takeTable } from './operation.ts';

const share = Type.Number({ minimum: 0, maximum: 1 });
const box = exact({ left: share, top: share, right: share, bottom: share });
const several = { ids: garmentIds, versions: Type.Optional(versionsById) };

export const garmentOperations = named('garments', {
	listGarments: get('/api/garments', 'Every garment, whatever its place, with its colours', listOf(garment)),
	getGarment: get('/api/garments/:id', 'One garment with its colours', garment),
	addGarment: add('/api/garments', 'Add a garment', garment, {
		body: exact({ name, photoIds: Type.Optional(Type.Array(photoId, { maxItems: 20 })) }),
	}),
	changeGarment: patch('/api/garments/:id', 'Change parts of a garment', garment, { body: garmentChanges }),
	changeGarments: patch('/api/garments', 'Change several garments alike', countOf('changed', 'So many were changed.'), {
		body: exact({ ...several, changes: Type.Partial(garmentChanges, { additionalProperties: false }) }),
	}),
	removeGarment: removeEntry('/api/garments/:id', 'Put a garment in the bin'),
	removeGarments: remove(
		'/api/garments',
		'Put several garments in the bin',
		countOf('removed', 'So many went to the bin.'),
		{ body: exact(several) },
	),
	mergeGarments: post('/api/garments/merge', 'Make one garment of several entries of it', garment, {
		body: exact(several),
	}),
	splitGarment: post('/api/garments/:id/split', 'Cut a photo that shows two garments in two', twoGarments, {
		body: exact({
			photoId,
			boxes: Type.Unsafe<[PictureBox, PictureBox]>(Type.Array(box, { minItems: 2, maxItems: 2 })),
		}),
	}),
	partGarment: post('/api/garments/:id/part', 'Give a photo to another garment', twoGarments, {
		body: exact({ photoId }),
	}),
	importGarments: takeTable('/api/garments/import', 'Garments', garmentImportAnswer),
});
