import { describe, expect, it } from 'vitest';
import { type Lab65, labFromLinear, labFromSrgb8, linearFromLab, xyzFromLab } from '../../../src/colour/lab65.ts';
import type { FrameLight } from '../../../src/reading/light/frame-light.ts';
import { type Beside, judgedNeutral } from '../../../src/reading/light/neutral-guard.ts';
import { LIGHT_GREY_PATCH, MIDDLE_GREY_PATCH, realCharts, WHITE_PATCH } from '../../support/real-charts.ts';

/** Linear sRGB. */
type Rgb = readonly [number, number, number];

/** A room in which luminances of 0.02 to 0.6 are spread evenly, with a dull mid-tone cloth. Invented. */
const frameOf = (brightest: number, surround: number): FrameLight => ({
	surround,
	isFlat: false,
	lights: Float32Array.from({ length: 3000 }, (_, i) => 0.02 + ((brightest - 0.02) * Math.floor(i / 3)) / 999),
});
/** The same room with so much of it filled by one more thing. */
const roomWith = (thing: Rgb, share: number, brightest = 0.3): FrameLight => {
	const room = frameOf(brightest, 0.1);
	const pixels = Math.round((1000 * share) / (1 - share));
	return { ...room, lights: Float32Array.from([...room.lights, ...Array<Rgb>(pixels).fill(thing).flat()]) };
};
const CLOTH: Lab65 = [45, 4, 10];
const beside = (told: Partial<Beside> = {}): Beside => ({
	frame: frameOf(0.6, 0.12),
	camera: 'phone',
	cloth: [{ lab: CLOTH, share: 1 }],
	isOnCloth: false,
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
		expect(answered).toMatchObject({ answer: 'taken', kind: 'white', isCertain: false });
		expect(answered.sentence).toContain('no surer');
	});

	// A wall of L* 66 behind an orange cap: nothing grey outshines it, but the cap would reflect 2.4 times the red of white paper.
	it('is refused where it is a wall in the shade of something coloured: nothing in the light of paper reflects more than all of one colour', () => {
		const wall = patch([66, -5, 3]);
		const cap: Rgb = [0.78, 0.28, 0.09];
		const alone = judgedNeutral(white, wall, beside({ frame: frameOf(0.4, 0.1) }));
		expect(alone.answer).toBe('taken');
		for (const told of [
			{ cloth: [{ lab: labFromLinear(cap), share: 0.8 }] },
			{ frame: roomWith(cap, 0.4), cloth: [] },
		]) {
			expect(judgedNeutral(white, wall, beside(told))).toMatchObject({ answer: 'refused', kind: 'white' });
		}
		// As bright and as vivid as the brightest patch of a chart beside its white: that may be.
		const vivid = linearFromLab([66, 0, 0]).map((channel, k) => channel * [1.3, 0.5, 0.1][k]!) as unknown as Rgb;
		const frame = roomWith(vivid, 0.4);
		expect(judgedNeutral(white, patch([66, 0, 0]), beside({ frame, cloth: [] })).answer).toBe('taken');
	});

	it('is asked about where it is the piece itself, whose colour says nothing by itself, but not where paper lies beside a piece', () => {
		const pale: Lab65 = [78, 2, 6];
		const cloth = [{ lab: pale, share: 0.9 }];
		const itself = judgedNeutral(white, patch([80, 2, 5]), beside({ cloth, isOnCloth: true }));
		expect(itself).toMatchObject({ answer: 'asked', isCertain: false });
		expect(itself.sentence).toContain('piece itself');
		expect(judgedNeutral(white, patch([80, 2, 5]), beside({ cloth })).answer).toBe('taken');
		const print = judgedNeutral(white, patch([85, 1, 2]), beside({ isOnCloth: true }));
		expect(print.answer).toBe('taken');
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
		expect(judgedNeutral(at, patch([80, 0, 0]), beside({ frame: frameOf(1, 0.12) }))).toMatchObject({ kind: 'white' });
	});

	// Beds, boards and walls as they look in phone photos: what nobody calls white or grey may be a mattress in the shade.
	it.each<[string, Lab65, number]>([
		['the shaded part of a white bed', [61, 0, 5], 0.9],
		['a grey bed', [53, 1, 1], 0.7],
		['a bed that outshines a dark room', [66, 0, 3], 0.3],
		['pale boards', [87, -2, 19], 0.7],
	])('is asked about where nobody says that it is white or grey, and it is %s', (_, lab, brightest) => {
		const judged = judgedNeutral(at, patch(lab), beside({ frame: frameOf(brightest, 0.12) }));
		expect(judged).toMatchObject({ answer: 'asked', isCertain: false });
	});

	it('is asked about as white or grey with what it would make of the cloth', () => {
		const open = judgedNeutral(
			at,
			patch([58, 0, 2]),
			beside({ frame: frameOf(0.9, 0.12), cloth: [{ lab: [75, 0, 0], share: 1 }] }),
		);
		expect(open.sentence).toContain('as white paper it would make the cloth off-white');
		expect(open.sentence).toMatch(/as a grey card .*grey/);
	});
});
