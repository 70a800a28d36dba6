import { Type } from 'typebox';
import { candidateCheck, candidateDetails, garment, maker, wish } from '../schemas/answers.ts';
import { byId, exact, seen } from '../schemas/basics.ts';
import { candidateChanges, makerChanges, makerFields, wishChanges, wishFields } from '../schemas/wish.ts';
import { listOf, removed } from './answers.ts';
import { LOOKING, LOOKING_AT_ONE, REFUSED } from './refusals.ts';

const wishTags = ['wishes'];
const candidateTags = ['candidates'];
const makerTags = ['makers'];

export const wishOperations = {
	listWishes: {
		method: 'GET',
		url: '/api/seasons/:id/wishes',
		schema: {
			operationId: 'listWishes',
			tags: wishTags,
			summary: 'The wishes of a season',
			params: byId,
			response: { 200: listOf(wish), ...LOOKING_AT_ONE },
		},
	},
	addWish: {
		method: 'POST',
		url: '/api/wishes',
		schema: {
			operationId: 'addWish',
			tags: wishTags,
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
			tags: wishTags,
			summary: 'Make a gap of the report a wish',
			params: byId,
			body: exact({ gapId: Type.String({ maxLength: 200 }) }),
			response: { 201: wish, ...REFUSED },
		},
	},
	changeWish: {
		method: 'PATCH',
		url: '/api/wishes/:id',
		schema: {
			operationId: 'changeWish',
			tags: wishTags,
			summary: 'Change parts of a wish',
			params: byId,
			body: wishChanges,
			response: { 200: wish, ...REFUSED },
		},
	},
	removeWish: {
		method: 'DELETE',
		url: '/api/wishes/:id',
		schema: {
			operationId: 'removeWish',
			tags: wishTags,
			summary: 'Strike a wish',
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	},
	listCandidates: {
		method: 'GET',
		url: '/api/seasons/:id/candidates',
		schema: {
			operationId: 'listCandidates',
			tags: candidateTags,
			summary: 'Pieces found for sale for a season',
			params: byId,
			response: { 200: listOf(candidateDetails), ...LOOKING_AT_ONE },
		},
	},
	checkCandidate: {
		method: 'GET',
		url: '/api/candidates/:id/check',
		schema: {
			operationId: 'checkCandidate',
			tags: candidateTags,
			summary: 'What speaks for and against a piece found for sale',
			params: byId,
			response: { 200: candidateCheck, ...LOOKING_AT_ONE },
		},
	},
	changeCandidate: {
		method: 'PATCH',
		url: '/api/candidates/:id',
		schema: {
			operationId: 'changeCandidate',
			tags: candidateTags,
			summary: 'Change parts of a candidate',
			params: byId,
			body: candidateChanges,
			response: { 200: candidateDetails, ...REFUSED },
		},
	},
	removeCandidate: {
		method: 'DELETE',
		url: '/api/candidates/:id',
		schema: {
			operationId: 'removeCandidate',
			tags: candidateTags,
			summary: 'Put a candidate in the bin',
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	},
	buyCandidate: {
		method: 'POST',
		url: '/api/candidates/:id/bought',
		schema: {
			operationId: 'buyCandidate',
			tags: candidateTags,
			summary: 'It was bought: a garment now, and its wish answered',
			params: byId,
			response: { 200: garment, ...REFUSED },
		},
	},
	passCandidate: {
		method: 'POST',
		url: '/api/candidates/:id/passed',
		schema: {
			operationId: 'passCandidate',
			tags: candidateTags,
			summary: 'It was left in the shop',
			params: byId,
			response: { 200: candidateDetails, ...REFUSED },
		},
	},
	listMakers: {
		method: 'GET',
		url: '/api/makers',
		schema: {
			operationId: 'listMakers',
			tags: makerTags,
			summary: 'Makers that the user trusts',
			response: { 200: listOf(maker), ...LOOKING },
		},
	},
	addMaker: {
		method: 'POST',
		url: '/api/makers',
		schema: {
			operationId: 'addMaker',
			tags: makerTags,
			summary: 'Add a maker',
			body: makerFields,
			response: { 201: maker, ...REFUSED },
		},
	},
	changeMaker: {
		method: 'PATCH',
		url: '/api/makers/:id',
		schema: {
			operationId: 'changeMaker',
			tags: makerTags,
			summary: 'Change parts of a maker',
			params: byId,
			body: makerChanges,
			response: { 200: maker, ...REFUSED },
		},
	},
	removeMaker: {
		method: 'DELETE',
		url: '/api/makers/:id',
		schema: {
			operationId: 'removeMaker',
			tags: makerTags,
			summary: 'Remove a maker',
			params: byId,
			querystring: seen,
			response: { 200: removed, ...REFUSED },
		},
	},
} as const;
