import { Type } from 'typebox';
import { lineUpChoice, lineUpResult, swap, whatIf } from '../schemas/answers.ts';
import { exact, told, version } from '../schemas/basics.ts';
import { quotasSchema } from '../schemas/season.ts';
import { listOf } from './answers.ts';
import { get, named, patch, post } from './operation.ts';

const id = Type.String({ maxLength: 100 });
const ids = Type.Array(id, { maxItems: 2000 });

export const lineUpOperations = named('line-up', {
	getLineUp: get('/api/seasons/:id/line-up', 'The set chosen for a season', lineUpChoice),
	chooseLineUp: patch(
		'/api/seasons/:id/line-up',
		'Choose garments, or say which must or must not be in',
		lineUpChoice,
		{
			body: Type.Partial(exact({ garmentIds: ids, mustKeep: ids, neverUse: ids, version }), {
				additionalProperties: false,
			}),
		},
	),
	buildLineUp: post(
		'/api/seasons/:id/line-up/build',
		'The best set that is found; nothing is chosen by it',
		lineUpResult,
		{
			body: exact({
				quotas: Type.Optional(quotasSchema),
				targetCount: Type.Optional(Type.Integer({ minimum: 1, maximum: 500 })),
				mustKeep: ids,
				neverUse: ids,
				prove: Type.Optional(Type.Boolean()),
				garmentIds: Type.Optional(told(ids, 'With prove: the set to prove, as it stands.')),
			}),
		},
	),
	findSwaps: post(
		'/api/seasons/:id/line-up/swaps',
		'What the set would be with each garment that could stand in for one of it',
		listOf(swap),
		{ body: exact({ garmentIds: ids, garmentId: id }) },
	),
	tryLineUp: post(
		'/api/seasons/:id/line-up/what-if',
		'What would become of a set with some garments less and some more',
		whatIf,
		{ body: exact({ garmentIds: ids, remove: ids, add: ids }) },
	),
});
