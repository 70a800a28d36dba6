import { describe, expect, it } from 'vitest';
import { askStore } from '../../src/app/decide.ts';
import { DamagedDecisionError } from '../../src/store/changes-text.ts';
import { KeyReusedError } from '../../src/store/deciding.ts';

describe('what the store refuses', () => {
	it.each([
		[new DamagedDecisionError('It is damaged.'), { code: 'conflict', status: 409, message: 'It is damaged.' }],
		[new KeyReusedError('It was used.'), { code: 'key-reused', status: 422, message: 'It was used.' }],
		[new RangeError('a bug'), { name: 'RangeError', message: 'a bug' }],
	])('is told as the person may hear it: %s', async (refusal, told) => {
		await expect(askStore(Promise.reject(refusal))).rejects.toMatchObject(told);
	});
});
