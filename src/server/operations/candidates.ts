import { candidateCheck, candidateDetails, garment } from '../schemas/answers.ts';
import { candidateChanges } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { act, change, look, removal } from './usual.ts';

const tags = ['candidates'];

export const candidateOperations = {
	listCandidates: look(
		'listCandidates',
		'/api/seasons/:id/candidates',
		tags,
		'Pieces found for sale for a season',
		listOf(candidateDetails),
	),
	checkCandidate: look(
		'checkCandidate',
		'/api/candidates/:id/check',
		tags,
		'What speaks for and against a piece found for sale',
		candidateCheck,
	),
	changeCandidate: change('changeCandidate', '/api/candidates/:id', tags, 'Change parts of a candidate', {
		body: candidateChanges,
		changed: candidateDetails,
	}),
	removeCandidate: removal('removeCandidate', '/api/candidates/:id', tags, 'Put a candidate in the bin'),
	buyCandidate: act(
		'buyCandidate',
		'/api/candidates/:id/bought',
		tags,
		'It was bought: a garment now, and its wish answered',
		garment,
	),
	passCandidate: act('passCandidate', '/api/candidates/:id/passed', tags, 'It was left in the shop', candidateDetails),
} as const;
