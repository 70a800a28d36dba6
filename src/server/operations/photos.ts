import { Type } from 'typebox';
import { CAMERA_KINDS } from '../../wardrobe/words/light.ts';
import { intakeItem, lightTrial, photoRecord, pointColour } from '../schemas/answers.ts';
import { exact, oneOf, seen, told, version } from '../schemas/basics.ts';
import { photoId } from '../schemas/garment.ts';
import { countOf, fileOf, listOf } from './answers.ts';
import { BUSY, LOOKING, LOOKING_AT_ONE, REFUSED } from './refusals.ts';
import { ofOne } from './usual.ts';

const tags = ['photos'];
const byPhoto = Type.Object({ id: photoId });
const lookAtPhoto = ofOne('GET', byPhoto, LOOKING_AT_ONE);
const coordinate = Type.Number({ minimum: 0 });
const step = Type.Number({ minimum: -10, maximum: 10 });

const neutralPoint = exact({
	x: coordinate,
	y: coordinate,
	lightness: Type.Optional(Type.Number({ minimum: 20, maximum: 100 })),
	sure: Type.Optional(Type.Boolean()),
});

const correction = Type.Partial(
	exact({
		neutrals: Type.Array(neutralPoint, { maxItems: 2 }),
		neutral: neutralPoint,
		camera: oneOf(CAMERA_KINDS),
		byHand: exact({ warmer: step, lighter: step }),
		lightGroup: Type.String({ minLength: 1, maxLength: 100 }),
		version,
	}),
	{ additionalProperties: false },
);

/** Pictures that are made from a photo. */
const DERIVED = ['thumb', 'display', 'labels', 'mask', 'cutout'] as const;

export const photoOperations = {
	addPhotos: {
		method: 'POST',
		url: '/api/photos',
		schema: {
			operationId: 'addPhotos',
			tags,
			summary: 'Take photos in (multipart/form-data: purpose, seasonId, then the files); they are read afterwards',
			consumes: ['multipart/form-data'],
			response: { 202: exact({ items: listOf(intakeItem) }), ...REFUSED, ...BUSY },
		},
	},
	listPhotos: {
		method: 'GET',
		url: '/api/photos',
		schema: {
			operationId: 'listPhotos',
			tags,
			summary: 'Photos and what was read of them; all, or those of these ids',
			querystring: Type.Object({
				ids: Type.Optional(told(Type.String({ maxLength: 100_000 }), 'Ids with commas between.')),
			}),
			response: { 200: listOf(photoRecord), ...LOOKING },
		},
	},
	getPhoto: lookAtPhoto('getPhoto', '/api/photos/:id', tags, 'One photo and what was read of it', photoRecord),
	getOriginal: lookAtPhoto(
		'getOriginal',
		'/api/photos/:id/original',
		tags,
		'The untouched photo',
		fileOf('image/*', 'The bytes as they came.'),
	),
	getPicture: {
		method: 'GET',
		url: '/api/photos/:id/:derived',
		schema: {
			operationId: 'getPicture',
			tags,
			summary: 'A picture made from a photo that was read',
			params: Type.Object({ id: photoId, derived: oneOf(DERIVED) }),
			querystring: Type.Object({ v: Type.Optional(Type.Integer()) }),
			response: { 200: fileOf('image/*', 'WebP, JPEG or PNG.'), ...LOOKING_AT_ONE },
		},
	},
	getColourAt: {
		method: 'GET',
		url: '/api/photos/:id/at',
		schema: {
			operationId: 'getColourAt',
			tags,
			summary: 'The colour at a point, in pixels of the upright picture',
			params: byPhoto,
			querystring: Type.Object({ x: coordinate, y: coordinate }),
			response: { 200: pointColour, ...LOOKING_AT_ONE },
		},
	},
	tryLight: {
		method: 'POST',
		url: '/api/photos/:id/light-trial',
		schema: {
			operationId: 'tryLight',
			tags,
			summary: 'What these neutrals would do to the colours; nothing is kept',
			params: byPhoto,
			body: exact({
				neutrals: Type.Array(neutralPoint, { minItems: 1, maxItems: 2 }),
				camera: Type.Optional(oneOf(CAMERA_KINDS)),
			}),
			response: { 200: lightTrial, ...REFUSED },
		},
	},
	correctPhoto: {
		method: 'PUT',
		url: '/api/photos/:id/correction',
		schema: {
			operationId: 'correctPhoto',
			tags,
			summary: 'Replace what was said of the light',
			params: byPhoto,
			body: correction,
			response: { 200: photoRecord, ...REFUSED },
		},
	},
	drawOutline: {
		method: 'PUT',
		url: '/api/photos/:id/mask',
		schema: {
			operationId: 'drawOutline',
			tags,
			summary: 'Replace the outline (image/png, white = clothes)',
			consumes: ['image/png'],
			params: byPhoto,
			querystring: seen,
			response: { 200: photoRecord, ...REFUSED },
		},
	},
	forgetOutline: {
		method: 'DELETE',
		url: '/api/photos/:id/mask',
		schema: {
			operationId: 'forgetOutline',
			tags,
			summary: "Go back to the program's own outline",
			params: byPhoto,
			querystring: seen,
			response: { 200: photoRecord, ...REFUSED },
		},
	},
	readAgain: {
		method: 'POST',
		url: '/api/photos/:id/retry',
		schema: {
			operationId: 'readAgain',
			tags,
			summary: 'Read a photo once more',
			params: byPhoto,
			response: { 202: told(exact({ queued: Type.Literal(true) }), 'It waits to be read.'), ...REFUSED },
		},
	},
	stopReading: {
		method: 'POST',
		url: '/api/photos/cancel',
		schema: {
			operationId: 'stopReading',
			tags,
			summary: 'Stop before the photos that still wait',
			response: { 200: countOf('cancelled', 'So many were not read.'), ...REFUSED },
		},
	},
} as const;
