import { Type } from 'typebox';
import { lineUpChoice, lineUpResult, swap, whatIf } from '../schemas/answers.ts';
import { byId, exact, told, version } from '../schemas/basics.ts';
import { quotasSchema } from '../schemas/season.ts';
import { listOf } from './answers.ts';
import { REFUSED } from './refusals.ts';
import { look } from './usual.ts';

const tags = ['line-up'];
const id = Type.String({ maxLength: 100 });
const ids = Type.Array(id, { maxItems: 2000 });

export const lineUpOperations = {
	getLineUp: look('getLineUp', '/api/seasons/:id/line-up', tags, 'The set chosen for a season', lineUpChoice),
	chooseLineUp: {
		method: 'PATCH',
		url: '/api/seasons/:id/line-up',
		schema: {
			operationId: 'chooseLineUp',
			tags,
			summary: 'Choose garments, or say which must or must not be in',
			params: byId,
			body: Type.Partial(exact({ garmentIds: ids, mustKeep: ids, neverUse: ids, version }), {
				additionalProperties: false,
			}),
			response: { 200: lineUpChoice, ...REFUSED },
		},
	},
	buildLineUp: {
		method: 'POST',
		url: '/api/seasons/:id/line-up/build',
		schema: {
			operationId: 'buildLineUp',
			tags,
			summary: 'The best set that is found; nothing is chosen by it',
			params: byId,
			body: exact({
				quotas: Type.Optional(quotasSchema),
				targetCount: Type.Optional(Type.Integer({ minimum: 1, maximum: 500 })),
				mustKeep: ids,
				neverUse: ids,
				prove: Type.Optional(Type.Boolean()),
				garmentIds: Type.Optional(told(ids, 'With prove: the set to prove, as it stands.')),
			}),
			response: { 200: lineUpResult, ...REFUSED },
		},
	},
	findSwaps: {
		method: 'POST',
		url: '/api/seasons/:id/line-up/swaps',
		schema: {
			operationId: 'findSwaps',
			tags,
			summary: 'What the set would be with each garment that could stand in for one of it',
			params: byId,
			body: exact({ garmentIds: ids, garmentId: id }),
			response: { 200: listOf(swap), ...REFUSED },
		},
	},
	tryLineUp: {
		method: 'POST',
		url: '/api/seasons/:id/line-up/what-if',
		schema: {
			operationId: 'tryLineUp',
			tags,
			summary: 'What would become of a set with some garments less and some more',
			params: byId,
			body: exact({ garmentIds: ids, remove: ids, add: ids }),
			response: { 200: whatIf, ...REFUSED },
		},
	},
} as const;
