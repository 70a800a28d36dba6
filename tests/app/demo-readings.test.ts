import { readFileSync } from 'node:fs';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import {
	demoPicture,
	demoReadings,
	demoScenario,
	picturesOfScenario,
	READ_FOLDER,
} from '../../src/app/demo-scenario.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { spoken } from '../../src/language/kept-sentence.ts';
import { inLanguage } from '../../src/language/speak.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';

const scenario = await demoScenario();
const kept = await demoReadings();
const classesOf = (bytes: Uint8Array) => sharp(bytes).raw().toBuffer();

describe('what is kept of the demo’s pictures', () => {
	it('is there for each of them, and for no other', () => {
		expect(Object.keys(kept).toSorted()).toEqual(
			picturesOfScenario(scenario)
				.map(({ file }) => file)
				.toSorted(),
		);
	});

	it('has its sentences by their names, so that each reader has them in a language of their own', () => {
		for (const { light, trust } of Object.values(kept)) {
			for (const sentence of [light.reason, trust.advice, ...trust.reasons])
				if (sentence) expect(inLanguage('de', () => spoken(sentence))).not.toBe(spoken(sentence));
		}
	});

	// The networks may differ in the last digits from one processor to another: what people see must not.
	it.each(picturesOfScenario(scenario).map(({ file }) => file))(
		'is what reading %s anew gives; where this fails, run "npm run demo-readings"',
		async (file) => {
			const result = await readPhoto(await demoPicture(file), { derived: true });
			if (!result.ok) throw new Error(result.message);
			const before = kept[file]!;
			const { swatches, trust, pattern, photoKind, light } = result.reading;
			expect({ photoKind, pattern: pattern.type, light: light.source }).toEqual({
				photoKind: before.photoKind,
				pattern: before.pattern.type,
				light: before.light.source,
			});
			expect(swatches).toHaveLength(before.swatches.length);
			for (const [index, { lab, slot }] of swatches.entries()) {
				expect(slot).toBe(before.swatches[index]!.slot);
				expect(deltaE2000(lab, before.swatches[index]!.lab)).toBeLessThan(0.5);
			}
			expect(trust.error).toBeCloseTo(before.trust.error, 0);
			const now = await classesOf(result.derived.labels!);
			const then = await classesOf(readFileSync(`${READ_FOLDER}${file}.labels.png`));
			expect(now.filter((label, index) => label !== then[index]).length / then.length).toBeLessThan(0.005);
		},
	);
});
