import { Ajv, type ValidateFunction } from 'ajv';
import type { DataValidationCxt } from 'ajv/dist/types/index.js';
import type { FastifyInstance, FastifySchemaCompiler } from 'fastify';
import { fieldPathWords } from '../language/field-word.ts';
import { eitherText } from '../language/numbers.ts';
import { say } from '../language/speak.ts';
import { isDay } from '../wardrobe/words/iso-day.ts';
import { TRIMMED } from './schemas/basics.ts';
import { valueInShort } from './value-in-short.ts';

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
		compiledWhenAsked(httpPart === 'body' ? strict : coercing, schema);
	app.setValidatorCompiler(compiler);
}

/** A check that is compiled when the first request needs it: most routes are not asked in most runs, and the program starts sooner. */
function compiledWhenAsked(ajv: Ajv, schema: object): ValidateFunction {
	let compiled: ValidateFunction | null = null;
	const check = (received: unknown): boolean => {
		compiled ??= ajv.compile(schema);
		const holds = compiled(received) as boolean;
		check.errors = compiled.errors ?? null;
		return holds;
	};
	check.errors = null as ValidateFunction['errors'];
	return check as ValidateFunction;
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

/** Checks whose limit is a number of things, and those whose limit is a number itself: each has its words. */
const COUNTED = ['minLength', 'maxLength', 'minItems', 'maxItems', 'minProperties'] as const;
const LIMITED = ['minimum', 'maximum', 'exclusiveMinimum', 'exclusiveMaximum'] as const;
const TYPES = ['string', 'number', 'integer', 'boolean', 'array', 'object', 'null'] as const;

/** Types in words, as many as a check allows. */
function typesInWords(types: readonly string[]): string {
	const words = types.flatMap((type) =>
		TYPES.filter((known) => known === type).map((known) => say(`validation.type_${known}`)),
	);
	return eitherText(words);
}

/** What a failed check asked for. */
function expectedBy({ keyword = '', params = {} }: Complaint = {}): string {
	if (params.additionalProperty) return say('validation.noField', { field: String(params.additionalProperty) });
	if (params.missingProperty) return say('validation.value');
	if (Array.isArray(params.allowedValues)) return say('validation.oneOf', { values: params.allowedValues.join(', ') });
	if ('allowedValue' in params) return JSON.stringify(params.allowedValue);
	if (params.type) return typesInWords([params.type].flat().map(String));
	const counted = COUNTED.find((one) => one === keyword);
	if (counted) return say(`validation.${counted}`, { count: Number(params.limit) });
	const limited = LIMITED.find((one) => one === keyword);
	if (limited) return say(`validation.${limited}`, { limit: Number(params.limit) });
	if (keyword === 'format' && params.format === 'date') return say('validation.day');
	if (keyword === 'pattern' && params.pattern === '\\S') return say('validation.text');
	if (keyword === 'pattern') return say('validation.pattern', { pattern: String(params.pattern) });
	return say(keyword === 'uniqueItems' ? 'validation.uniqueItems' : 'validation.other');
}

/** Where in the request the first failed check looked, as a JSON Pointer (RFC 6901); '' for the whole of it. */
export function fieldOfComplaints([first]: readonly Complaint[] = []): string {
	const { instancePath = '', params = {} } = first ?? {};
	return params.missingProperty === undefined ? instancePath : `${instancePath}/${String(params.missingProperty)}`;
}

/** One sentence for a failed schema check: what was expected, for what, what came. Fields are named in words. */
export function sentenceOfComplaints(complaints: readonly Complaint[], where: string, received: unknown): string {
	const first = complaints[0];
	const asked = fieldOfComplaints(complaints).split('/').filter(Boolean);
	const value = asked.reduce<unknown>((at, key) => (at as Record<string, unknown> | undefined)?.[key], received);
	return say('validation.sentence', {
		expected: expectedBy(first),
		where: fieldPathWords(asked.length > 0 ? asked : [where]),
		received: value === undefined ? say('paletteEdits.nothing') : valueInShort(value),
	});
}
