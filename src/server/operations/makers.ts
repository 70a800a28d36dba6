import { maker } from '../schemas/answers.ts';
import { makerChanges, makerFields } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { LOOKING, REFUSED } from './refusals.ts';
import { change, removal } from './usual.ts';

const tags = ['makers'];

export const makerOperations = {
	listMakers: {
		method: 'GET',
		url: '/api/makers',
		schema: {
			operationId: 'listMakers',
			tags,
			summary: 'Makers that the user trusts',
			response: { 200: listOf(maker), ...LOOKING },
		},
	},
	addMaker: {
		method: 'POST',
		url: '/api/makers',
		schema: {
			operationId: 'addMaker',
			tags,
			summary: 'Add a maker',
			body: makerFields,
			response: { 201: maker, ...REFUSED },
		},
	},
	changeMaker: change('changeMaker', '/api/makers/:id', tags, 'Change parts of a maker', {
		body: makerChanges,
		changed: maker,
	}),
	removeMaker: removal('removeMaker', '/api/makers/:id', tags, 'Remove a maker'),
} as const;
