import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ENGLISH, GERMAN } from '../../src/language/catalogue.ts';
import { dayText, moneyText, numberText } from '../../src/language/numbers.ts';
import { inLanguage, type SentenceKey, say, spokenLanguage } from '../../src/language/speak.ts';

type Catalogue = Readonly<Record<string, Readonly<Record<string, string>>>>;
const entries = (catalogue: Catalogue) =>
	Object.entries(catalogue).flatMap(([area, words]) =>
		Object.entries(words).map(([key, text]) => ({ key: `${area}.${key}`, text })),
	);
const english = entries(ENGLISH);
const german = new Map(entries(GERMAN).map(({ key, text }) => [key, text]));
/** A blank with a capital is the same one. */
const blanksIn = (text: string) =>
	(text.match(/\{\{\w+\}\}/g) ?? []).map((blank) => `{{${blank.charAt(2).toLowerCase()}${blank.slice(3)}`).toSorted();

const sourcesBelow = (folder: string): string[] =>
	readdirSync(folder, { recursive: true, encoding: 'utf8' })
		.filter((name) => /\.tsx?$/.test(name) && !name.includes('dist'))
		.map((name) => readFileSync(join(folder, name), 'utf8'));

describe('the catalogue', () => {
	it('has every key in German, and no other', () => {
		expect([...german.keys()].toSorted()).toEqual(english.map(({ key }) => key).toSorted());
	});

	it('names no area in two files, of which the later would hide the earlier', () => {
		const areas = readdirSync('src/language/en')
			.map((file) => readFileSync(join('src/language/en', file), 'utf8'))
			.flatMap((text) => [...text.matchAll(/^\t'?([\w-]+)'?: \{/gm)].map(([, area]) => area!));
		expect(areas.filter((area, at) => areas.indexOf(area) !== at)).toEqual([]);
	});

	it('fills the same blanks in both languages', () => {
		const other = english.filter(({ key, text }) => {
			const own = new Set(blanksIn(german.get(key)!));
			return [...new Set(blanksIn(text))].some((blank) => !own.has(blank)) || own.size > new Set(blanksIn(text)).size;
		});
		expect(other).toEqual([]);
	});

	it('refuses in one form in German: what was expected, or for what', () => {
		const others = [...german].filter(([, text]) => /\bErwartet (?!wurden?\b|für „)/.test(text));
		expect(others).toEqual([]);
	});

	it('leaves no sentence untranslated: what is the same in both languages is a name or a sign', () => {
		const same = english.filter(({ key, text }) => german.get(key) === text && text.split(' ').length > 3);
		expect(same).toEqual([]);
	});

	it('holds no word that nothing says', () => {
		const markup = readFileSync('web/pocket/pocket.html', 'utf8');
		const said = [...sourcesBelow('src'), ...sourcesBelow('web'), markup].join('\n');
		const unsaid = english.filter(({ key }) => {
			const plain = key.replace(/_(one|other)$/, '');
			const [area, name] = plain.split('.') as [string, string];
			// Keys put together from a word, such as `kinds.${kind}`, count for their whole area; `made_${role}` for all that begin so.
			const ways = [
				`'${plain}'`,
				`{${plain}}`,
				`\`${area}.\${`,
				`${area}.${name}\``,
				`${area}.${name.split('_')[0]}_\${`,
			];
			return !ways.some((way) => said.includes(way));
		});
		expect(unsaid.map(({ key }) => key)).toEqual([]);
	});
});

describe('speaking', () => {
	it('goes back to the language before, also when the work fails', () => {
		const word = () => say('kinds.shirt');
		expect(inLanguage('de', () => [word(), inLanguage('en-US', word), word()])).toEqual(['Hemd', 'shirt', 'Hemd']);
		expect(() =>
			inLanguage('de', () => {
				throw new RangeError('no');
			}),
		).toThrow(RangeError);
		expect(spokenLanguage()).toBe('en-GB');
	});

	it('refuses work that is not done when it returns: others would speak meanwhile', () => {
		expect(() => inLanguage('de', async () => say('kinds.shirt'))).toThrow(TypeError);
	});

	it('chooses the form by number as the language does', () => {
		const garments = (count: number) => say('counts.garments', { count });
		expect([0, 1, 2].map(garments)).toEqual(['0 garments', '1 garment', '2 garments']);
		expect(inLanguage('de', () => [1, 2].map(garments))).toEqual(['1 Kleidungsstück', '2 Kleidungsstücke']);
	});

	it('writes a colour as a noun where German does: after "in"', () => {
		const gap = () => say('gaps.someMissing', { colour: 'waldgrün' });
		expect(inLanguage('de', gap)).toMatch(/^Du hast zu wenig in Waldgrün: /);
		expect(inLanguage('de', () => say('gaps.allMissing', { colour: 'waldgrün' }))).toMatch(/ ist waldgrün\.$/);
	});

	it('shows names as they are, whatever signs they hold', () => {
		const name = '<b>{{x}} $t(kinds.shirt) & "Ada"</b>';
		expect(say('gaps.stored' satisfies SentenceKey, { name })).toBe(
			`First bring ${name} back: it is stored and could fill this gap.`,
		);
	});
});

// Unicode CLDR, through the Intl of Node: the forms of numbers and dates of each language.
describe('numbers and days', () => {
	it('are written as the language writes them', () => {
		expect(numberText(1234.5)).toBe('1,234.5');
		expect(moneyText(3)).toBe('3.00');
		expect(dayText('2026-03-14')).toBe('14 Mar 2026');
		expect(inLanguage('en-US', () => dayText('2026-03-14'))).toBe('Mar 14, 2026');
		expect(inLanguage('de', () => [numberText(1234.5), moneyText(3), dayText('2026-03-14')])).toEqual([
			'1.234,5',
			'3,00',
			'14.03.2026',
		]);
		expect(dayText('some day')).toBe('some day');
	});
});
