import { Type } from 'typebox';
import { wish } from '../schemas/answers.ts';
import { exact } from '../schemas/basics.ts';
import { wishChanges, wishFields } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { add, get, named, patch, removeEntry } from './operation.ts';

export const wishOperations = named('wishes', {
	listWishes: get('/api/seasons/:id/wishes', 'The wishes of a season', listOf(wish)),
	addWish: add('/api/wishes', 'Wish for a piece', wish, { body: exact(wishFields) }),
	wishForGap: add('/api/seasons/:id/wishes/from-gap', 'Make a gap of the report a wish', wish, {
		body: exact({ gapId: Type.String({ maxLength: 200 }) }),
	}),
	changeWish: patch('/api/wishes/:id', 'Change parts of a wish', wish, { body: wishChanges }),
	removeWish: removeEntry('/api/wishes/:id', 'Strike a wish'),
});
