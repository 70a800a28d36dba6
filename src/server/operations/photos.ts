import { Type } from 'typebox';
import { CAMERA_KINDS } from '../../wardrobe/words/light.ts';
import { intakeItem, lightTrial, photoRecord, pointColour } from '../schemas/answers.ts';
import { exact, oneOf, seen, told, version } from '../schemas/basics.ts';
import { photoId } from '../schemas/garment.ts';
import { countOf, fileOf, listOf } from './answers.ts';
import { begin, get, named, post, put, remove } from './operation.ts';
import { BUSY } from './refusals.ts';

const params = Type.Object({ id: photoId });
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

export const photoOperations = named('photos', {
	addPhotos: begin(
		'/api/photos',
		'Take photos in (multipart/form-data: purpose, seasonId, then the files); they are read afterwards',
		exact({ items: listOf(intakeItem) }),
		{ consumes: ['multipart/form-data'], also: BUSY },
	),
	listPhotos: get('/api/photos', 'Photos and what was read of them; all, or those of these ids', listOf(photoRecord), {
		querystring: Type.Object({
			ids: Type.Optional(told(Type.String({ maxLength: 100_000 }), 'Ids with commas between.')),
		}),
	}),
	getPhoto: get('/api/photos/:id', 'One photo and what was read of it', photoRecord, { params }),
	getOriginal: get('/api/photos/:id/original', 'The untouched photo', fileOf('image/*', 'The bytes as they came.'), {
		params,
	}),
	getPicture: get(
		'/api/photos/:id/:derived',
		'A picture made from a photo that was read',
		fileOf('image/*', 'WebP, JPEG or PNG.'),
		{
			params: Type.Object({ id: photoId, derived: oneOf(DERIVED) }),
			querystring: Type.Object({ v: Type.Optional(Type.Integer()) }),
		},
	),
	getColourAt: get('/api/photos/:id/at', 'The colour at a point, in pixels of the upright picture', pointColour, {
		params,
		querystring: Type.Object({ x: coordinate, y: coordinate }),
	}),
	tryLight: post(
		'/api/photos/:id/light-trial',
		'What these neutrals would do to the colours; nothing is kept',
		lightTrial,
		{
			params,
			body: exact({
				neutrals: Type.Array(neutralPoint, { minItems: 1, maxItems: 2 }),
				camera: Type.Optional(oneOf(CAMERA_KINDS)),
			}),
		},
	),
	correctPhoto: put('/api/photos/:id/correction', 'Replace what was said of the light', photoRecord, {
		params,
		body: correction,
	}),
	drawOutline: put('/api/photos/:id/mask', 'Replace the outline (image/png, white = clothes)', photoRecord, {
		consumes: ['image/png'],
		params,
		querystring: seen,
	}),
	forgetOutline: remove('/api/photos/:id/mask', "Go back to the program's own outline", photoRecord, {
		params,
		querystring: seen,
	}),
	readAgain: begin(
		'/api/photos/:id/retry',
		'Read a photo once more',
		told(exact({ queued: Type.Literal(true) }), 'It waits to be read.'),
		{ params },
	),
	stopReading: post(
		'/api/photos/cancel',
		'Stop before the photos that still wait',
		countOf('cancelled', 'So many were not read.'),
	),
});
