import Fastify from 'fastify';
import { Type } from 'typebox';
import { describe, expect, it } from 'vitest';
import { exact } from '../../src/server/schemas/basics.ts';
import { checkAnswers } from '../support/answer-check.ts';

/** Problems told of an operation that says it answers `{name: string}` and answers this. */
async function problemsOf(status: number, answer: object): Promise<string[]> {
	const problems: string[] = [];
	const app = Fastify();
	app.setSerializerCompiler(() => (value) => JSON.stringify(value));
	const schema = { response: { 200: exact({ name: Type.String() }) } };
	app.get('/api/thing', { schema }, async (_request, reply) =>
		reply.code(status as 200).send(answer as { name: string }),
	);
	checkAnswers(app, (problem) => problems.push(problem));
	await app.inject('/api/thing');
	return problems;
}

describe('the check of every answer in the tests', () => {
	it('takes what the schema says', async () => expect(await problemsOf(200, { name: 'Oat' })).toEqual([]));

	it.each([
		['a field too many', 200, { name: 'Oat', kind: 'coat' }],
		['a field too few', 200, {}],
		['another kind of value', 200, { name: 3 }],
		['a status that is not named', 201, { name: 'Oat' }],
	])('tells of %s', async (_what, status, answer) => expect(await problemsOf(status, answer)).toHaveLength(1));
});
