import { describe, expect, it } from 'vitest';
import { keepDay, keepList, keptWords, spoken, spokenJson } from '../../src/language/kept-sentence.ts';
import { dayText, listText } from '../../src/language/numbers.ts';
import { inLanguage, say } from '../../src/language/speak.ts';
import { garmentName } from '../../src/wardrobe/words/garment-name.ts';
import { aGarment } from '../support/build-wardrobe.ts';

const inEach = (text: string) => [spoken(text), inLanguage('de', () => spoken(text))];

describe('a stored sentence', () => {
	it('is said in the language of whoever reads it, days and lists too', () => {
		expect(inEach(keptWords('decisions.wore', { name: 'Oat shirt', day: keepDay('2026-03-14') }))).toEqual([
			'Wore Oat shirt on 14 Mar 2026',
			'Oat shirt am 14.03.2026 getragen',
		]);
		expect(inEach(keptWords('decisions.joined', { names: keepList(['A', 'B', 'C']) }))).toEqual([
			'Joined A, B and C',
			'A, B und C zusammengelegt',
		]);
	});

	it('chooses its form by the number that it was stored with', () => {
		expect([1, 2].map((count) => spoken(keptWords('counts.garments', { count })))).toEqual(['1 garment', '2 garments']);
	});

	it('is what any work says that is done to be stored, and reads the same as if it had been said', () => {
		const work = () => `${say('kinds.shirt')}: ${listText(['a', 'b'])}, ${dayText('2026-03-14')}`;
		const stored = inLanguage('kept', work);
		expect(stored).not.toContain('shirt:');
		for (const language of ['en-GB', 'en-US', 'de'] as const)
			expect(inLanguage(language, () => spoken(stored))).toBe(inLanguage(language, work));
	});

	it('keeps colours as colours: a name by looks reads as if it had been given in that language', () => {
		const coat = aGarment({ id: 'c', kind: 'coat', lab: [35, 58, 40] });
		const stored = inLanguage('kept', () => garmentName(coat));
		for (const language of ['en-GB', 'de'] as const)
			expect(inLanguage(language, () => spoken(stored))).toBe(inLanguage(language, () => garmentName(coat)));
	});

	it('leaves what was stored as a sentence before, and what it does not know, as they are', () => {
		expect(spoken('Changed the “red” coat')).toBe('Changed the “red” coat');
		expect(spoken('a \uE000not.known\uE001x=:1\uE002 b')).toContain('not.known');
		expect(spoken('half \uE000kinds.shirt')).toBe('half \uE000kinds.shirt');
	});

	// ECMA-404: quotation marks, backslashes and line ends within a string are escaped.
	it('within JSON stays JSON, whatever signs a name holds', () => {
		const name = 'the "best"\\ <b>\n';
		const stored = {
			sentence: keptWords('decisions.wished', { name }),
			list: [keptWords('home.keyReused', { key: name })],
		};
		expect(JSON.parse(spokenJson(JSON.stringify(stored)))).toEqual({
			sentence: `Wished for ${name}`,
			list: [say('home.keyReused', { key: name })],
		});
	});
});
