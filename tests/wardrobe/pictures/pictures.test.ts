import fc from 'fast-check';
import solverModule from 'javascript-lp-solver';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { type Picture, picturesOf } from '../../../src/wardrobe/pictures/picture.ts';
import { answersOf } from '../../../src/wardrobe/pictures/picture-outfit.ts';
import { wearableSentence, wishedPieceSentence } from '../../../src/wardrobe/pictures/picture-sentences.ts';
import { answerOf } from '../../../src/wardrobe/pictures/piece-answer.ts';
import { allMatched, answeringGarments } from '../../../src/wardrobe/pictures/wearable-count.ts';
import { wearablePictures } from '../../../src/wardrobe/pictures/wearable-pictures.ts';
import { wishedPieces } from '../../../src/wardrobe/pictures/wished-pieces.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import type { Inspiration } from '../../../src/wardrobe/words/season.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { apartBy } from '../../support/colours-apart.ts';
import { picture, piece } from './build-picture.ts';

// The package's types describe its CommonJS build, where the solver is the property `default`; Node imports the ES module.
const solver = solverModule as unknown as typeof solverModule.default;

const TRUST = { error: 6, reasons: [], advice: null };
const STRIPED = { type: 'striped', sure: 0.95 } as const;
const SPRING = aSeasonInput().season;

describe('whether a garment answers a piece', () => {
	const cases: readonly [string, Parameters<typeof piece>, Partial<Garment> & { lab: Lab65 }, string | null][] = [
		['the same kind and colour', ['jacket', RUST], { kind: 'jacket', lab: RUST }, 'has it'],
		['a T-shirt for a plain top', ['top', OAT], { kind: 't-shirt', lab: OAT }, 'has it'],
		['a blazer for a jacket', ['jacket', INK], { kind: 'blazer', lab: INK }, 'has it'],
		['a jumper where a shirt is worn comes near', ['shirt', INK], { kind: 'jumper', lab: INK }, 'near it'],
		['another colour', ['jacket', RUST], { kind: 'jacket', lab: TEAL }, 'missing'],
		['a skirt is no coat', ['coat', INK], { kind: 'skirt', lab: INK }, null],
		['a hat is no bag', ['bag', INK], { kind: 'hat', lab: INK }, null],
		['a cardigan may lie over a shirt', ['jacket', OAT], { kind: 'cardigan', lab: OAT }, 'near it'],
		['stripes for a plain one come near', ['shirt', OAT], { kind: 'shirt', lab: OAT, pattern: STRIPED }, 'near it'],
	];
	it.each(cases)('%s', (_, of, garment, degree) => {
		expect(answerOf(piece(...of), TRUST, aGarment({ id: 'g', ...garment }))?.degree ?? null).toBe(degree);
	});

	it.each([
		// Street outfits and a real wardrobe (bench/NOTES.md, Pictures): 12 apart stands in, 18 comes near.
		['shirt', 11, 'has it'],
		['shirt', 13, 'near it'],
		['shirt', 17, 'near it'],
		['shirt', 19, 'missing'],
		// Another kind and another colour are one too many.
		['jumper', 11, 'near it'],
		['jumper', 13, 'missing'],
	] as const)('a %s %d away from a shirt: %s', (kind, away, degree) => {
		const owned = aGarment({ id: 'g', kind, lab: apartBy(OAT, away) });
		expect(answerOf(piece('shirt', OAT), TRUST, owned)?.degree).toBe(degree);
	});

	it('a piece of unsure kind is answered by either of the two likeliest, one whose slot alone is known by any of the slot', () => {
		const unsure = piece('coat', INK, {
			kind: null,
			kinds: [
				{ kind: 'coat', probability: 0.5 },
				{ kind: 'jacket', probability: 0.4 },
				{ kind: 'cardigan', probability: 0.05 },
			],
		});
		const degree = (kind: Kind) => answerOf(unsure, TRUST, aGarment({ id: 'g', kind, lab: INK }))?.degree;
		expect([degree('coat'), degree('blazer'), degree('cardigan')]).toEqual(['has it', 'has it', 'near it']);
		const slotOnly = piece('coat', INK, { kind: null, kinds: [] });
		expect(answerOf(slotOnly, TRUST, aGarment({ id: 'g', kind: 'blazer', lab: INK }))?.degree).toBe('has it');
	});
});

describe('a picture worn from what is owned', () => {
	it('prefers a garment of the likelier kind to one whose colour is a little nearer, and the colour where it is much nearer', () => {
		const kinds = [
			{ kind: 'shirt' as const, probability: 0.6 },
			{ kind: 't-shirt' as const, probability: 0.3 },
		];
		const shown = picture('p', [piece('shirt', [50, 0, 0], { kind: null, kinds })]);
		const tee = aGarment({ id: 'tee', kind: 't-shirt', lab: [50, 0, 0] });
		const chosen = (lab: Lab65, from = shown) =>
			answersOf(from, [tee, aGarment({ id: 'shirt', kind: 'shirt', lab })])[0]!.garmentId;
		expect(chosen([50, 3, 0])).toBe('shirt');
		expect(chosen([50, 8, 0])).toBe('tee');
		const even = kinds.map(({ kind }) => ({ kind, probability: 0.5 }));
		expect(chosen([50, 3, 0], picture('p', [piece('shirt', [50, 0, 0], { kind: null, kinds: even })]))).toBe('tee');
	});

	it('gives one garment to one piece only', () => {
		const two = picture('p', [piece('shirt', OAT), piece('t-shirt', OAT)]);
		const only = aGarment({ id: 'shirt', kind: 'shirt', lab: OAT });
		const answers = answersOf(two, [only]);
		expect(answers.map(({ answer }) => answer.degree).sort()).toEqual(['has it', 'missing']);
	});

	it('is as cheap as the best assignment that a solver of linear programs finds', () => {
		// Outside check: javascript-lp-solver, a general-purpose solver from the npm registry, on the same small cases.
		const labs: readonly Lab65[] = [OAT, INK, RUST, TEAL, [70, 10, 20], [30, 5, -10]];
		const kinds: readonly Kind[] = ['shirt', 't-shirt', 'jumper', 'skirt', 'trousers'];
		const part = fc.record({ kind: fc.constantFrom(...kinds), lab: fc.constantFrom(...labs) });
		fc.assert(
			fc.property(fc.array(part, { minLength: 1, maxLength: 4 }), fc.array(part, { maxLength: 6 }), (worn, owned) => {
				const shown = picture(
					'p',
					worn.map(({ kind, lab }) => piece(kind, lab)),
				);
				const garments = owned.map(({ kind, lab }, index) => aGarment({ id: `g${index}`, kind, lab }));
				const ours = answersOf(shown, garments);
				const variables: Record<string, Record<string, number>> = {};
				const constraints: Record<string, { max: number }> = {};
				for (const [p, one] of shown.pieces.entries()) {
					constraints[`p${p}`] = { max: 1 };
					for (const [g, garment] of garments.entries()) {
						constraints[`g${g}`] = { max: 1 };
						const answer = answerOf(one, shown.trust, garment);
						if (!answer || answer.degree === 'missing') continue;
						const worth = answer.degree === 'has it' ? 1000 : 999;
						variables[`${p} ${g}`] = { worth, [`p${p}`]: 1, [`g${g}`]: 1 };
					}
				}
				const solved = solver.Solve({ optimize: 'worth', opType: 'max', constraints, variables }) as { result: number };
				const worth = ours.reduce(
					(sum, { answer }) => sum + { 'has it': 1000, 'near it': 999, missing: 0 }[answer.degree],
					0,
				);
				expect(worth).toBeCloseTo(solved.result || 0, 6);
				const used = ours.filter(({ answer }) => answer.degree !== 'missing').map(({ garmentId }) => garmentId);
				expect(new Set(used).size).toBe(used.length);
			}),
			{ seed: 7, numRuns: 150 },
		);
	});

	it('counts stored garments and says so, but none that is leaving', () => {
		const shown = [picture('p', [piece('dress', RUST), piece('boots', INK)])];
		const dress = aGarment({ id: 'dress', kind: 'dress', lab: RUST });
		const boots = (place: Garment['place']) => aGarment({ id: 'boots', kind: 'boots', lab: INK, place });
		expect(wearablePictures(shown, [dress, boots('rail')], SPRING)[0]).toMatchObject({ away: 0, fromStore: false });
		expect(wearablePictures(shown, [dress, boots('stored')], SPRING)[0]).toMatchObject({ away: 0, fromStore: true });
		expect(wearablePictures(shown, [dress, boots('leaving')], SPRING)[0]).toMatchObject({ away: 1 });
	});

	it('counts a stored garment in season alone, and says where another part of the year keeps one from counting', () => {
		const shown = [picture('p', [piece('dress', RUST), piece('boots', INK)])];
		const dress = aGarment({ id: 'dress', kind: 'dress', lab: RUST });
		const boots = aGarment({ id: 'boots', kind: 'boots', lab: INK, place: 'stored', yearParts: ['winter'] });
		const [inSpring] = wearablePictures(shown, [dress, boots], SPRING);
		expect(inSpring).toMatchObject({ away: 1, fromStore: false, storedForLater: true });
		expect(wearableSentence(inSpring!, TRUST)).toMatch(/another part of the year/);
		const [inWinter] = wearablePictures(shown, [dress, boots], { ...SPRING, yearPart: 'winter' });
		expect(inWinter).toMatchObject({ away: 0, fromStore: true, storedForLater: false });
		const onTheRail = wearablePictures(shown, [dress, { ...boots, place: 'rail' }], SPRING)[0];
		expect(onTheRail).toMatchObject({ away: 0, fromStore: false, storedForLater: false });
	});

	it('a missing accessory keeps nothing from being worn', () => {
		const shown = [picture('p', [piece('dress', RUST), piece('bag', TEAL)])];
		expect(wearablePictures(shown, [aGarment({ id: 'd', kind: 'dress', lab: RUST })], SPRING)[0]).toMatchObject({
			away: 0,
		});
	});

	it('the count for many sets says of each set what looking at every picture says', () => {
		const pictures = [
			picture('a', [piece('shirt', OAT), piece('skirt', INK)]),
			picture('b', [piece('shirt', OAT), piece('t-shirt', OAT), piece('skirt', INK)]),
			picture('c', [piece('coat', TEAL)]),
		];
		const garments = [
			aGarment({ id: '0', kind: 'shirt', lab: OAT }),
			aGarment({ id: '1', kind: 't-shirt', lab: OAT }),
			aGarment({ id: '2', kind: 'skirt', lab: INK }),
			aGarment({ id: '3', kind: 'coat', lab: TEAL }),
		];
		const options = answeringGarments(pictures, garments);
		const count = (has: (garment: number) => boolean) => options.filter((pieces) => allMatched(pieces, has)).length;
		for (let set = 0; set < 16; set++) {
			const has = (index: number) => (set & (1 << index)) !== 0;
			const worn = wearablePictures(
				pictures,
				garments.filter((_, index) => has(index)),
				SPRING,
			);
			expect(count(has)).toBe(worn.filter(({ away }) => away === 0).length);
		}
	});
});

describe('pieces to look for', () => {
	const board = [
		picture('a', [piece('jacket', RUST), piece('skirt', INK)]),
		picture('b', [piece('jacket', [47, 34, 38]), piece('skirt', INK)]),
		picture('c', [piece('jacket', RUST), piece('boots', OAT)]),
		picture('d', [piece('scarf', TEAL), piece('skirt', INK)]),
	];
	const skirt = aGarment({ id: 'skirt', kind: 'skirt', lab: INK });
	const wishedOn = (pictures: readonly Picture[], garments: readonly Garment[]) =>
		wishedPieces({ board: pictures, wearable: wearablePictures(pictures, garments, SPRING) }, garments);

	it('gathers near-equal ones and puts first what makes most pictures wearable', () => {
		const [first, ...rest] = wishedOn(board, [skirt]);
		expect(first).toMatchObject({ kind: 'jacket', slot: 'outer', pictures: ['a', 'b', 'c'], completes: ['a', 'b'] });
		expect(first!.pictures).toContain(first!.exampleIn);
		expect(rest.map(({ kind }) => kind)).toEqual(['boots', 'scarf']);
		expect(rest.every(({ completes }) => completes.length === 0)).toBe(true);
	});

	it('is nothing where everything is owned, and does not depend on the order of the board', () => {
		const forwards = wishedOn(board, [skirt]);
		const backwards = wishedOn([...board].reverse(), [skirt]);
		expect(backwards.map(({ family, completes }) => [family, [...completes].sort()])).toEqual(
			forwards.map(({ family, completes }) => [family, [...completes].sort()]),
		);
		const all = board.flatMap(({ pieces, accessories }) => [...pieces, ...accessories]);
		const owned = all.map(({ kind, swatches }, index) =>
			aGarment({ id: `${index}`, kind: kind!, lab: swatches[0]!.lab }),
		);
		expect(wishedOn(board, owned)).toEqual([]);
	});

	it('are told where pictures likely lack one, and longer where it was told before', () => {
		// 17 away answers today, within 18, but by photos that err by 6 so barely that other photos may say otherwise.
		const jacket = aGarment({ id: 'jacket', kind: 'jacket', lab: apartBy(RUST, 17), trust: TRUST });
		const asked = (pictures: number, before: readonly string[] = []) => {
			const shown = Array.from({ length: pictures }, (_, at) => picture(`${at}`, [piece('jacket', RUST)]));
			return wishedPieces({ board: shown, wearable: wearablePictures(shown, [jacket], SPRING) }, [jacket], before);
		};
		expect(asked(1)).toEqual([]);
		const [perhaps] = asked(2);
		expect(perhaps).toMatchObject({ perhaps: true, kind: 'jacket', nearestGarmentId: 'jacket' });
		expect(asked(1, [perhaps!.id])).toMatchObject([{ id: perhaps!.id, perhaps: true }]);
	});

	it('of one kind are one wish up to the width of a palette colour, 20', () => {
		const wishes = (away: number) =>
			wishedOn([picture('a', [piece('jacket', TEAL)]), picture('b', [piece('jacket', apartBy(TEAL, away))])], [])
				.length;
		expect([wishes(15), wishes(25)]).toEqual([1, 2]);
	});

	it('name what is owned nearest only where it helps to imagine them', () => {
		// Opposite colours begin at about 40. Our choice.
		const said = (away: number) => {
			const coat = aGarment({ id: 'grey coat', kind: 'coat', lab: apartBy([90, 0, 0], away) });
			const [wished] = wishedOn([picture('a', [piece('coat', [90, 0, 0])])], [coat]);
			return wishedPieceSentence(wished!, 1, new Map([['grey coat', 'grey coat']]));
		};
		expect(said(30)).toContain('Nearest of what you own: grey coat.');
		expect(said(50)).toContain('You own nothing like it.');
	});

	it('a piece bought as wished makes those pictures wearable', () => {
		const [first] = wishedOn(board, [skirt]);
		const bought = aGarment({ id: 'new', kind: first!.kind!, lab: first!.lab });
		const worn = wearablePictures(board, [skirt, bought], SPRING);
		for (const id of first!.completes) expect(worn.find(({ inspirationId }) => inspirationId === id)!.away).toBe(0);
	});
});

describe('pictures of a board', () => {
	const inspiration = (id: string, more: Partial<Inspiration> = {}): Inspiration => ({
		id,
		seasonId: 's',
		photoId: id,
		title: id,
		group: '',
		addedAt: '2026-01-01T00:00:00Z',
		...more,
	});

	it('older readings give one piece a slot, a scene gives none, and the user wins', () => {
		const old = aReading([aSwatch(RUST, 0.6, 'outer'), aSwatch(INK, 0.4, 'bottom')]);
		const told = { ...old, pieces: [piece('coat', RUST, { kind: null, kinds: [{ kind: 'coat', probability: 0.5 }] })] };
		const pictures = picturesOf([
			{ inspiration: inspiration('old'), reading: old },
			{ inspiration: inspiration('scene'), reading: aReading([aSwatch(RUST)]) },
			{ inspiration: inspiration('told', { pieceKinds: [{ piece: 0, kind: 'jacket' }] }), reading: told },
		]);
		expect(pictures.map(({ inspirationId }) => inspirationId)).toEqual(['old', 'told']);
		expect(pictures[0]!.pieces.map(({ slot, kind }) => [slot, kind])).toEqual([
			['outer', null],
			['bottom', null],
		]);
		expect(pictures[1]!.pieces[0]).toMatchObject({ kind: 'jacket' });
	});

	it('a kind that the user told moves the piece to where that kind is worn', () => {
		const seen = [
			piece('top', RUST, { kind: null, kinds: [{ kind: 'top', probability: 0.5 }] }),
			piece('trousers', INK),
			piece('shirt', OAT),
		];
		const reading = { ...aReading(seen.map(({ slot }) => aSwatch(RUST, 0.3, slot))), pieces: seen };
		const [only] = picturesOf([
			{
				inspiration: inspiration('p', {
					pieceKinds: [
						{ piece: 0, kind: 'coat' },
						{ piece: 2, kind: 'scarf' },
					],
				}),
				reading,
			},
		]);
		expect(only!.pieces.map(({ slot, kind, place, told }) => [slot, kind, place, told])).toEqual([
			['outer', 'coat', 0, true],
			['bottom', 'trousers', 1, false],
		]);
		expect(only!.accessories).toMatchObject([{ kind: 'scarf', place: 2, told: true }]);
	});

	it('what is too small to be judged is left out', () => {
		const reading = {
			...aReading([aSwatch(RUST, 1, 'top')]),
			pieces: [piece('shirt', RUST), piece('boots', INK, { share: 0.005 })],
		};
		const [only] = picturesOf([{ inspiration: inspiration('p'), reading }]);
		expect(only!.pieces.map(({ kind }) => kind)).toEqual(['shirt']);
	});
});
