import { describe, expect, it } from 'vitest';
import { fieldPathWords, fieldWord } from '../../src/language/field-word.ts';
import { inLanguage, isSaid } from '../../src/language/speak.ts';
import { HOSTED } from '../../src/server/hosted/operations.ts';
import { OPERATIONS } from '../../src/server/operations/all.ts';
import { sentenceOfComplaints } from '../../src/server/validation.ts';

type Schema = { readonly properties?: Readonly<Record<string, Schema>>; readonly [part: string]: unknown };

/** The names of all fields of a schema, however deep. */
function* namesIn(schema: Schema | undefined): Generator<string> {
	if (!schema || typeof schema !== 'object') return;
	for (const [name, field] of Object.entries(schema.properties ?? {})) {
		yield name;
		yield* namesIn(field);
	}
	for (const part of ['items', 'anyOf', 'allOf', 'additionalProperties', 'patternProperties'])
		for (const inner of [schema[part]].flat()) yield* namesIn(inner as Schema);
}

describe('the words for fields', () => {
	it('there is one for every field that a request may bring', () => {
		const operations = [...Object.values(OPERATIONS), ...Object.values(HOSTED)] as readonly {
			readonly schema: Readonly<Record<string, unknown>>;
		}[];
		const names = new Set(
			operations.flatMap(({ schema }) =>
				['body', 'querystring', 'params'].flatMap((part) => [...namesIn(schema[part] as Schema | undefined)]),
			),
		);
		expect(names.size).toBeGreaterThan(100);
		const wordless = [...names].filter(
			(name) => !['fieldNames', 'kinds', 'slots'].some((area) => isSaid(`${area}.${name}`)),
		);
		expect(wordless).toEqual([]);
	});

	it('say where in a list a field stands, and give back what has no word', () => {
		expect(fieldPathWords(['wears', '2', 'on'])).toBe('wears, no. 3, day');
		expect(inLanguage('de', () => fieldPathWords(['quotas', 'outer']))).toBe('Stücke je Sorte, Mäntel und Jacken');
		expect(fieldWord('somethingElse')).toBe('somethingElse');
	});
});

// The checker is Ajv; its keywords are those of JSON Schema (draft 2020-12, validation vocabulary).
describe('a refused request', () => {
	it.each([
		[
			{ keyword: 'type', instancePath: '/price', params: { type: ['number', 'null'] } },
			{ price: 'x' },
			'Expected a number or null for “price”; received "x".',
			'Erwartet für „Preis“: eine Zahl oder null; gegeben wurde "x".',
		],
		[
			{ keyword: 'required', instancePath: '', params: { missingProperty: 'endsOn' } },
			{},
			'Expected a value for “last day”; received nothing.',
			'Erwartet für „letzter Tag“: ein Wert; gegeben wurde nichts.',
		],
		[
			{ keyword: 'maximum', instancePath: '/days/coldDay', params: { limit: 50 } },
			{ days: { coldDay: 70 } },
			'Expected at most 50 for “days, a usual cold day”; received 70.',
			'Erwartet für „Tage, ein üblicher kalter Tag“: höchstens 50; gegeben wurde 70.',
		],
		[
			{ keyword: 'maxLength', instancePath: '/name', params: { limit: 1 } },
			{ name: 'ab' },
			'Expected at most 1 character for “name”; received "ab".',
			'Erwartet für „Name“: höchstens 1 Zeichen; gegeben wurde "ab".',
		],
		[
			{ keyword: 'enum', instancePath: '/place', params: { allowedValues: ['rail', 'gone'] } },
			{ place: 'attic' },
			'Expected one of rail, gone for “place”; received "attic".',
			'Erwartet für „Platz“: eins von rail, gone; gegeben wurde "attic".',
		],
	])('says in words what is wrong: %j', (complaint, received, english, german) => {
		const said = () => sentenceOfComplaints([complaint], 'body', received);
		expect(said()).toBe(english);
		expect(inLanguage('de', said)).toBe(german);
	});
});
