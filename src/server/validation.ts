import { Ajv } from 'ajv';
import type { FastifyInstance, FastifySchemaCompiler } from 'fastify';

/**
 * Bodies are taken literally (a wrong type or unknown key is refused, never repaired), while query and path strings are
 * turned into the numbers and booleans that their schema asks for.
 */
export function validateBodiesStrictly(app: FastifyInstance): void {
	// The first complaint is enough: collecting all of a hostile body costs the server seconds.
	const strict = new Ajv({ allErrors: false, coerceTypes: false, removeAdditional: false, useDefaults: true });
	const coercing = new Ajv({ allErrors: false, coerceTypes: 'array', removeAdditional: true, useDefaults: true });
	const compiler: FastifySchemaCompiler<object> = ({ schema, httpPart }) =>
		(httpPart === 'body' ? strict : coercing).compile(schema);
	app.setValidatorCompiler(compiler);
}

type Complaint = {
	readonly instancePath?: string;
	readonly message?: string;
	readonly params?: Record<string, unknown>;
};

/** One sentence for a failed schema check: what was expected, for what, what came. */
export function sentenceOfComplaints(complaints: readonly Complaint[], where: string, received: unknown): string {
	const first = complaints[0];
	const path = (first?.instancePath ?? '').slice(1).split('/').filter(Boolean);
	const value = path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], received);
	const extra = first?.params?.additionalProperty;
	const allowed = first?.params?.allowedValues;
	const expected = extra
		? `no field "${String(extra)}"`
		: Array.isArray(allowed)
			? `one of ${allowed.join(', ')}`
			: (first?.message ?? 'something else').replace(/^must /, 'it to ');
	const shown = value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 80);
	return `Expected ${expected} for ${path.length > 0 ? path.join('.') : `the ${where}`}; received ${shown}.`;
}
