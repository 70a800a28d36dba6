import { Type } from 'typebox';
import { inspiration } from '../schemas/answers.ts';
import { byId, exact, seen, shortText, version } from '../schemas/basics.ts';
import { listOf, removed } from './answers.ts';
import { LOOKING_AT_ONE, REFUSED } from './refusals.ts';

const tags = ['inspirations'];
const changes = Type.Partial(exact({ title: shortText, group: shortText, version }), { additionalProperties: false });

export const inspirationOperations = {
	listInspirations: {
		method: 'GET',
		url: '/api/seasons/:id/inspirations',
		schema: {
			operationId: 'listInspirations',
			tags,
			summary: "The pictures of a season's board",
			params: byId,
			response: { 200: listOf(inspiration), ...LOOKING_AT_ONE },
		},
	},
	changeInspiration: {
		method: 'PATCH',
		url: '/api/inspirations/:id',
		schema: {
			operationId: 'changeInspiration',
			tags,
			summary: 'Name or group a picture',
			params: byId,
			body: changes,
			response: { 200: inspiration, ...REFUSED },
		},
	},
	removeInspiration: {
		method: 'DELETE',
		url: '/api/inspirations/:id',
		schema: {
			operationId: 'removeInspiration',
			tags,
			summary: 'Take a picture off the board',
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	},
} as const;
