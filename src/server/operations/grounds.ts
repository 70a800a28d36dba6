import { Type } from 'typebox';
import { GROUND_WORDS } from '../../app/decisions/say-ground.ts';
import { groundSet } from '../schemas/answers.ts';
import { exact, oneOf } from '../schemas/basics.ts';
import { photoId } from '../schemas/garment.ts';
import { listOf } from './answers.ts';
import { LOOKING, REFUSED } from './refusals.ts';

const tags = ['photos'];

export const groundOperations = {
	listGrounds: {
		method: 'GET',
		url: '/api/grounds',
		schema: {
			operationId: 'listGrounds',
			tags,
			summary:
				'Photos that show one bed, floor or wall, and whether its colour tells their light; the largest set first',
			response: { 200: listOf(groundSet), ...LOOKING },
		},
	},
	sayGround: {
		method: 'POST',
		url: '/api/grounds',
		schema: {
			operationId: 'sayGround',
			tags,
			summary: 'Say that photos show one ground or each another, or leave it to their look; no photo is read again',
			body: exact({ photoIds: Type.Array(photoId, { minItems: 1, maxItems: 1000 }), word: oneOf(GROUND_WORDS) }),
			response: { 200: listOf(groundSet), ...REFUSED },
		},
	},
} as const;
