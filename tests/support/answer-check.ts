import { Ajv2020 } from 'ajv/dist/2020.js';
import type { FastifyInstance } from 'fastify';

type Answers = Readonly<Record<string, { readonly content?: object } | undefined>>;

/** One check for each schema, made once for all test files of a worker. */
const checks = new WeakMap<object, ReturnType<Ajv2020['compile']>>();
const ajv = new Ajv2020({ strict: false, validateFormats: false, allErrors: true });

function checkOf(schema: object) {
	const known = checks.get(schema);
	if (known) return known;
	const check = ajv.compile(schema);
	checks.set(schema, check);
	return check;
}

/**
 * Holds every answer of the application to the schema of its operation: a status that the operation does not name is a problem, and so is a
 * field too many, too few, or of another kind. Problems are told to `report`.
 */
export function checkAnswers(app: FastifyInstance, report: (problem: string) => void): void {
	app.addHook('onSend', async (request, reply, payload) => {
		const { url, schema } = request.routeOptions;
		const answers = schema?.response as Answers | undefined;
		if (!url?.startsWith('/api/') || !answers) return payload;
		const what = `${request.method} ${url} answered ${reply.statusCode}`;
		const expected = answers[reply.statusCode];
		if (!expected) report(`${what}, which its operation does not name.`);
		else if (expected.content === undefined && typeof payload === 'string') {
			const check = checkOf(expected);
			if (!check(JSON.parse(payload)))
				report(`${what} otherwise than its schema says: ${ajv.errorsText(check.errors)}.`);
		}
		return payload;
	});
}
