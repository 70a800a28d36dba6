import { describe, expect, it } from 'vitest';
import { type Lab65, labFromLinear, labFromSrgb8, xyzFromLab } from '../../../src/colour/lab65.ts';
import type { FrameLight } from '../../../src/reading/light/frame-light.ts';
import { type Beside, judgedNeutral } from '../../../src/reading/light/neutral-guard.ts';
import { LIGHT_GREY_PATCH, MIDDLE_GREY_PATCH, realCharts, WHITE_PATCH } from '../../support/real-charts.ts';

/** A room in which luminances of 0.02 to 0.6 are spread evenly, with a dull mid-tone cloth. Invented. */
const frameOf = (brightest: number, surround: number): FrameLight => ({
	surround,
	isFlat: false,
	luminances: Float64Array.from({ length: 1000 }, (_, i) => 0.02 + ((brightest - 0.02) * i) / 999),
});
const CLOTH: Lab65 = [45, 4, 10];
const beside = (told: Partial<Beside> = {}): Beside => ({
	frame: frameOf(0.6, 0.12),
	camera: 'phone',
	cloth: [{ lab: CLOTH, share: 1 }],
	...told,
});
const patch = (lab: Lab65, burntShare = 0) => ({ lab, burntShare });
const at = { x: 1, y: 1 };
const white = { ...at, lightness: 95 };
const grey = { ...at, lightness: 50 };

describe('what the user points at as neutral', () => {
	it('is taken in every real photo of a chart: white, light grey and middle grey', () => {
		for (const { id, seen, truth, surround, camera } of realCharts()) {
			const frame = frameOf(xyzFromLab(seen[WHITE_PATCH]!)[1], surround);
			for (const place of [WHITE_PATCH, LIGHT_GREY_PATCH, MIDDLE_GREY_PATCH]) {
				const point = { ...at, lightness: truth[place]![0] };
				const judged = judgedNeutral(point, patch(seen[place]!), beside({ frame, camera, cloth: [] }));
				expect(judged.answer, `${id}, patch ${place + 1}: ${judged.sentence}`).toBe('taken');
			}
		}
	});

	// Colours as they may look in a photo; the cardigan and the window are those of two mishaps, about.
	it.each<[string, Lab65, Partial<Beside>, string]>([
		['an orange cardigan', labFromSrgb8(214, 120, 52), {}, 'orange'],
		['a pink sheet', labFromSrgb8(240, 160, 190), {}, 'pink'],
		['a lawn', labFromSrgb8(90, 150, 60), {}, 'green'],
		['a blue wall', labFromSrgb8(90, 130, 210), {}, 'blue'],
		['black trousers', labFromSrgb8(28, 27, 26), {}, 'dark'],
		[
			'a dull thing beside a bright cloth',
			labFromSrgb8(128, 128, 128),
			{ cloth: [{ lab: [90, 0, 4], share: 0.8 }] },
			'lighter',
		],
	])('is refused where it is %s, with the reason', (_, lab, told, word) => {
		const judged = judgedNeutral(white, patch(lab), beside(told));
		expect(judged).toMatchObject({ answer: 'refused', kind: 'white' });
		expect(judged.sentence).toContain(word);
		expect(judged.sentence).toContain('not used');
	});

	it('is refused where it is a window or a lamp: burnt out, and far brighter than all around', () => {
		const dark = beside({ frame: frameOf(1, 0.01) });
		const judged = judgedNeutral(white, patch([100, 0, 0], 1), dark);
		expect(judged.answer).toBe('refused');
		expect(judged.sentence).toContain('window or lamp');
	});

	it.each<[string, Lab65, number, Partial<Beside>, string]>([
		['burnt out', [99, 0, 0], 0.9, {}, 'burnt out'],
		['far brighter than all around', [96, 0, 0], 0, { frame: frameOf(0.9, 0.005) }, 'window'],
		['under a strong warm lamp, or cream', labFromSrgb8(235, 190, 135), 0, {}, 'orange or yellow'],
		['a bluish window', labFromSrgb8(190, 222, 255), 0, {}, 'blue'],
		['darker than much of the picture', [62, 0, 0], 0, {}, 'brighter'],
	])('is asked about where it is %s', (_, lab, burntShare, told, word) => {
		const judged = judgedNeutral(white, patch(lab, burntShare), beside(told));
		expect(judged.answer).toBe('asked');
		expect(judged.sentence).toContain(word);
		const answered = judgedNeutral({ ...white, sure: true }, patch(lab, burntShare), beside(told));
		expect(answered).toMatchObject({ answer: 'taken', kind: 'white' });
	});

	it('stays refused whatever the user says, where no lamp could make it so', () => {
		expect(judgedNeutral({ ...white, sure: true }, patch(labFromSrgb8(214, 120, 52)), beside()).answer).toBe('refused');
	});

	// A blouse and shorts, nearly white and grey, photographed on two wooden floors: they came out blue.
	it.each<[string, Lab65, Lab65]>([
		['pale boards', [67, 8, 15], [79, -2, -9]],
		['dark boards', [45, 11, 22], [78, 0, 4]],
	])(
		'is no grey card by itself where it is %s, since cloth that is grey beside it would come out blue',
		(_, floor, cloth) => {
			const frame = frameOf(0.9, 0.12);
			const onFloor = beside({ cloth: [{ lab: cloth, share: 0.9 }], frame });
			expect(judgedNeutral(at, patch(floor), onFloor)).toMatchObject({ answer: 'refused', kind: 'grey' });
			// Who says that a card lies there is asked at most, and so is one under a lamp that colours the cloth alike.
			expect(judgedNeutral(grey, patch([45, 7, 17]), onFloor).sentence).not.toContain('thing itself');
			const alike = beside({ cloth: [{ lab: [40, 8, 16], share: 0.9 }], frame });
			expect(judgedNeutral(at, patch([45, 7, 17]), alike).answer).not.toBe('refused');
		},
	);

	it('is refused as a grey where it would push the cloth beyond white: dark trousers are no grey card', () => {
		const judged = judgedNeutral(grey, patch([22, 0, 0]), beside({ cloth: [{ lab: [80, 3, 8], share: 1 }] }));
		expect(judged.answer).toBe('refused');
	});

	it('is taken for white paper or a grey card by how bright it is in the picture, where that is not told, and says so', () => {
		const [bright, dull] = [
			judgedNeutral(at, patch(labFromLinear([0.7, 0.7, 0.7])), beside()),
			judgedNeutral(at, patch(labFromLinear([0.25, 0.25, 0.25])), beside()),
		];
		expect(bright).toMatchObject({ answer: 'taken', kind: 'white', neutral: { lightness: 95 } });
		expect(bright.sentence).toContain('next to nothing in the picture is brighter');
		expect(dull).toMatchObject({ kind: 'grey', neutral: { lightness: 50 } });
		expect(dull.sentence).toContain('much of the picture is brighter');
		const open = judgedNeutral(at, patch([68, 0, 0]), beside({ frame: frameOf(0.9, 0.12) }));
		expect(open).toMatchObject({ answer: 'asked' });
		expect(open.sentence).toContain('may be white or grey');
		expect(judgedNeutral(at, patch([80, 0, 0]), beside({ frame: frameOf(1, 0.12) }))).toMatchObject({ kind: 'white' });
	});
});
