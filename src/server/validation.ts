import { Ajv } from 'ajv';
import type { DataValidationCxt } from 'ajv/dist/types/index.js';
import type { FastifyInstance, FastifySchemaCompiler } from 'fastify';
import { say } from '../language/speak.ts';
import { isDay } from '../wardrobe/words/iso-day.ts';
import { TRIMMED } from './schemas/basics.ts';

/**
 * Bodies are taken literally (a wrong type or unknown key is refused, never repaired), while query and path strings are
 * turned into the numbers and booleans that their schema asks for.
 */
export function validateBodiesStrictly(app: FastifyInstance): void {
	// The first complaint is enough: collecting all of a hostile body costs the server seconds.
	const strict = new Ajv({ allErrors: false, coerceTypes: false, removeAdditional: false, useDefaults: true });
	const coercing = new Ajv({ allErrors: false, coerceTypes: 'array', removeAdditional: true, useDefaults: true });
	for (const ajv of [strict, coercing]) {
		ajv.addFormat('date', isDay);
		ajv.addKeyword({ keyword: TRIMMED, type: 'string', schemaType: 'boolean', modifying: true, validate: trim });
	}
	const compiler: FastifySchemaCompiler<object> = ({ schema, httpPart }) =>
		(httpPart === 'body' ? strict : coercing).compile(schema);
	app.setValidatorCompiler(compiler);
}

/** Takes the blanks around a text away, where the schema asks for it. */
function trim(wanted: boolean, text: string, _schema?: unknown, place?: DataValidationCxt): boolean {
	if (wanted && place) place.parentData[place.parentDataProperty] = text.trim();
	return true;
}

type Complaint = {
	readonly keyword?: string;
	readonly instancePath?: string;
	readonly message?: string;
	readonly params?: Record<string, unknown>;
};

/** What a failed check asked for. */
function expectedBy({ keyword, message, params = {} }: Complaint = {}): string {
	if (params.additionalProperty) return say('validation.noField', { field: String(params.additionalProperty) });
	if (Array.isArray(params.allowedValues)) return say('validation.oneOf', { values: params.allowedValues.join(', ') });
	if (keyword === 'format' && params.format === 'date') return say('validation.day');
	if (keyword === 'pattern' && params.pattern === '\\S') return say('validation.text');
	// The checker's own words are English; what they ask for is told by a sign or a number in them.
	return message ? message.replace(/^must /, say('validation.itTo')) : say('validation.other');
}

/** One sentence for a failed schema check: what was expected, for what, what came. */
export function sentenceOfComplaints(complaints: readonly Complaint[], where: string, received: unknown): string {
	const first = complaints[0];
	const path = (first?.instancePath ?? '').slice(1).split('/').filter(Boolean);
	const value = path.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], received);
	const expected = expectedBy(first);
	const shown = value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 80);
	return say('validation.sentence', { expected, where: path.length > 0 ? path.join('.') : where, received: shown });
}
