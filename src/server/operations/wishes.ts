import { Type } from 'typebox';
import { wish } from '../schemas/answers.ts';
import { byId, exact } from '../schemas/basics.ts';
import { wishChanges, wishFields } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { REFUSED } from './refusals.ts';
import { change, look, removal } from './usual.ts';

const tags = ['wishes'];

export const wishOperations = {
	listWishes: look('listWishes', '/api/seasons/:id/wishes', tags, 'The wishes of a season', listOf(wish)),
	addWish: {
		method: 'POST',
		url: '/api/wishes',
		schema: {
			operationId: 'addWish',
			tags,
			summary: 'Wish for a piece',
			body: exact(wishFields),
			response: { 201: wish, ...REFUSED },
		},
	},
	wishForGap: {
		method: 'POST',
		url: '/api/seasons/:id/wishes/from-gap',
		schema: {
			operationId: 'wishForGap',
			tags,
			summary: 'Make a gap of the report a wish',
			params: byId,
			body: exact({ gapId: Type.String({ maxLength: 200 }) }),
			response: { 201: wish, ...REFUSED },
		},
	},
	changeWish: change('changeWish', '/api/wishes/:id', tags, 'Change parts of a wish', {
		body: wishChanges,
		changed: wish,
	}),
	removeWish: removal('removeWish', '/api/wishes/:id', tags, 'Strike a wish'),
} as const;
