import { Type } from 'typebox';
import { GROUND_WORDS } from '../../app/decisions/say-ground.ts';
import { groundSet } from '../schemas/answers.ts';
import { exact, oneOf } from '../schemas/basics.ts';
import { photoId } from '../schemas/garment.ts';
import { listOf } from './answers.ts';
import { get, named, post } from './operation.ts';

export const groundOperations = named('photos', {
	listGrounds: get(
		'/api/grounds',
		'Photos that show one bed, floor or wall, and whether its colour tells their light; the largest set first',
		listOf(groundSet),
	),
	sayGround: post(
		'/api/grounds',
		'Say that photos show one ground or each another, or leave it to their look; no photo is read again',
		listOf(groundSet),
		{ body: exact({ photoIds: Type.Array(photoId, { minItems: 1, maxItems: 1000 }), word: oneOf(GROUND_WORDS) }) },
	),
});
