import { candidateCheck, candidateDetails, garment } from '../schemas/answers.ts';
import { candidateChanges } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { get, named, patch, post, removeEntry } from './operation.ts';

export const candidateOperations = named('candidates', {
	listCandidates: get('/api/seasons/:id/candidates', 'Pieces found for sale for a season', listOf(candidateDetails)),
	checkCandidate: get(
		'/api/candidates/:id/check',
		'What speaks for and against a piece found for sale',
		candidateCheck,
	),
	changeCandidate: patch('/api/candidates/:id', 'Change parts of a candidate', candidateDetails, {
		body: candidateChanges,
	}),
	removeCandidate: removeEntry('/api/candidates/:id', 'Put a candidate in the bin'),
	buyCandidate: post('/api/candidates/:id/bought', 'It was bought: a garment now, and its wish answered', garment),
	passCandidate: post('/api/candidates/:id/passed', 'It was left in the shop', candidateDetails),
});
