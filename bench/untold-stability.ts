import type { Lab65 } from '../src/colour/lab65.ts';
import { chroma } from '../src/colour/lab65.ts';
import { twinsOf } from '../src/wardrobe/fit/twins.ts';
import { pairContextOf } from '../src/wardrobe/pairs/pair-context.ts';
import { pairTable } from '../src/wardrobe/pairs/pair-table.ts';
import { answersTo } from '../src/wardrobe/pictures/piece-answer.ts';
import { seasonReport } from '../src/wardrobe/season/report.ts';
import type { Garment } from '../src/wardrobe/words/garment.ts';
import type { SeasonInput } from '../src/wardrobe/words/season-input.ts';
import { normalPair, seededRandom } from '../src/wardrobe/words/seeded-random.ts';
import { generatedWardrobe, styledBoard } from './generated-wardrobe.ts';
import { seasonHome } from './season-home.ts';
import type { Row, Table } from './table.ts';

const GARMENTS = 44;
const PICTURES = 12;
const ROUNDS = 8;
const HOMES = ['a', 'b', 'c'] as const;
/** So many garments are owned twice. */
const OWNED_TWICE = 12;
const AGAIN = ' again';
/** What 8 phone photos of a chart err by where nothing tells their light (fixtures/reference/real-charts.csv): lightness, and tints by their chroma. */
const LIGHTNESS = 9;
const TINT = { least: 3, ofChroma: 0.15 };

/** All garments photographed again, each photo erring by its own light. */
function photographed(garments: readonly Garment[], seed: string): Garment[] {
	return garments.map((garment) => {
		const random = seededRandom(`${seed} ${garment.id}`);
		const [lightness, a] = normalPair(random);
		const [b] = normalPair(random);
		const moved = (lab: Lab65): Lab65 => {
			const tint = TINT.least + TINT.ofChroma * chroma(lab);
			return [Math.min(97, Math.max(3, lab[0] + LIGHTNESS * lightness)), lab[1] + tint * a, lab[2] + tint * b];
		};
		return { ...garment, swatches: garment.swatches.map((swatch) => ({ ...swatch, lab: moved(swatch.lab) })) };
	});
}

/** What is said of a wardrobe, judgement by judgement, each thing as a word by its name; what is not said is left out. */
function said(input: SeasonInput): Record<string, ReadonlyMap<string, string>> {
	const { garments } = input;
	const report = seasonReport(input);
	const table = pairTable(garments, pairContextOf(input));
	const partners = new Map<string, string>();
	for (const [i, one] of garments.entries())
		for (const [j, other] of garments.entries())
			if (i < j && table.together(i, j) && table.supported(i, j)) partners.set(`${one.id} ${other.id}`, 'go');
	const answers = new Map<string, string>();
	for (const [at, { reading }] of input.inspirations.entries())
		for (const [which, piece] of (reading.pieces ?? []).entries()) {
			const answer = answersTo(piece, reading.trust);
			for (const garment of garments) {
				const degree = answer(garment)?.degree ?? 'missing';
				if (degree !== 'missing') answers.set(`${at} ${which} ${garment.id}`, degree);
			}
		}
	return {
		verdicts: new Map(report.garments.map(({ garmentId, fit }) => [garmentId, fit.likely])),
		partners,
		answers,
	};
}

/** Of the garments owned twice the share that is told as twins, and how many other pairs are told so for each of them; both in percent. */
function twinsFound(garments: readonly Garment[]): readonly [found: number, others: number] {
	const { twins } = twinsOf(garments);
	const real = twins.filter(({ garmentA, garmentB }) => garmentB === garmentA + AGAIN || garmentA === garmentB + AGAIN);
	return [(100 * real.length) / OWNED_TWICE, (100 * (twins.length - real.length)) / OWNED_TWICE];
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Share of what either of two readings says, in percent, that the other says otherwise or not. */
function flipsBetween(one: ReadonlyMap<string, string>, other: ReadonlyMap<string, string>): number {
	const names = new Set([...one.keys(), ...other.keys()]);
	const flips = [...names].filter((name) => one.get(name) !== other.get(name)).length;
	return (100 * flips) / Math.max(1, names.size);
}

/** What changes when everything is photographed again and nothing tells the light of any photo: lightness weighed as the formula has it, and less. */
export function untoldStability(): Table {
	const judgements = ['verdicts', 'partners', 'answers'] as const;
	const rows = HOMES.flatMap((seed) =>
		[false, true].map((untold): Row => {
			const home = seasonHome(
				generatedWardrobe(GARMENTS, `untold ${seed}`),
				styledBoard(PICTURES, `untold board ${seed}`),
			);
			const twice = home.garments.slice(0, OWNED_TWICE).map((garment) => ({ ...garment, id: garment.id + AGAIN }));
			const garments = [...home.garments, ...twice].map((garment) => ({
				...garment,
				trust: { ...garment.trust, error: 10, ...(untold ? { untold } : {}) },
			}));
			const rounds = Array.from({ length: ROUNDS }, (_, round) => photographed(garments, `${seed} ${round}`));
			const readings = rounds.map((again) => said({ ...home, garments: again.slice(0, GARMENTS) }));
			const flips = judgements.map((judgement) =>
				meanOf(readings.slice(1).map((now, at) => flipsBetween(readings[at]![judgement]!, now[judgement]!))),
			);
			const twins = rounds.map(twinsFound);
			const ofTwins = [meanOf(twins.map(([found]) => found)), meanOf(twins.map(([, others]) => others))];
			return [`home ${seed}`, untold ? 'less' : 'as the formula has it', ...flips, ...ofTwins];
		}),
	);
	return {
		title: `${GARMENTS} garments photographed again ${ROUNDS} times, nothing telling the light: % of what is said that is then said otherwise`,
		columns: [
			'',
			'lightness weighed',
			'likely verdicts',
			'partners',
			"pieces' answers",
			'owned twice: told as twins, %',
			'others told so, for each %',
		],
		rows,
		notes: ['Lightness errs by 9, tints by 3 and 0.15 of the chroma, as 8 phone photos of a chart do.'],
	};
}
