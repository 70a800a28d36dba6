import { maker } from '../schemas/answers.ts';
import { makerChanges, makerFields } from '../schemas/wish.ts';
import { listOf } from './answers.ts';
import { add, get, named, patch, removeEntry } from './operation.ts';

export const makerOperations = named('makers', {
	listMakers: get('/api/makers', 'Makers that the user trusts', listOf(maker)),
	addMaker: add('/api/makers', 'Add a maker', maker, { body: makerFields }),
	changeMaker: patch('/api/makers/:id', 'Change parts of a maker', maker, { body: makerChanges }),
	removeMaker: removeEntry('/api/makers/:id', 'Remove a maker'),
});
