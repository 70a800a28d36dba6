import { describe, expect, it } from 'vitest';
import { markedPieces } from '../../../src/reading/kinds/marked-pieces.ts';
import type { LabelMap } from '../../../src/reading/pixels.ts';

/** A picture from rows of digits, each pixel ten by ten pixels wide: 0 background, 1 top .. 7 accessory, 8 skin, 9 hair. */
function labelsOf(...rows: readonly string[]): LabelMap {
	const width = rows[0]!.length;
	const classes = new Uint8Array(width * 10 * rows.length * 10);
	for (let at = 0; at < classes.length; at++)
		classes[at] = Number(rows[Math.floor(at / (width * 100))]![Math.floor((at % (width * 10)) / 10)]);
	return { widthPx: width * 10, heightPx: rows.length * 10, classes };
}

const told = (labels: LabelMap) => markedPieces(labels).map(({ slot, area }) => [slot, area / 100]);

describe('the pieces that labels hold', () => {
	it('are one a slot, also where something hides the middle of it', () => {
		expect(told(labelsOf('00900', '01410', '01410', '03330'))).toEqual([
			['top', 4],
			['bottom', 3],
			['full', 2],
		]);
	});

	it('are one a region of accessories, the larger one first', () => {
		expect(told(labelsOf('07000', '00077', '00077', '00000'))).toEqual([
			['accessory', 4],
			['accessory', 1],
		]);
	});

	it('join regions that touch by a side, and not by a corner or around the edge', () => {
		expect(told(labelsOf('7700', '0700', '0070', '0000'))).toEqual([
			['accessory', 3],
			['accessory', 1],
		]);
		expect(told(labelsOf('0007', '7000', '0000', '0000'))).toHaveLength(2);
	});

	it('are none where nobody wears anything, or only a speck', () => {
		expect(told(labelsOf('0889', '0880'))).toEqual([]);
		expect(told(labelsOf('6000000000', ...Array<string>(11).fill('0000000000')))).toEqual([]);
	});

	it('mark each pixel of a slot once', () => {
		const labels = labelsOf('7107', '0117', '7717');
		const sum = new Uint8Array(labels.classes.length);
		for (const { marks } of markedPieces(labels)) for (let at = 0; at < sum.length; at++) sum[at]! += marks[at]!;
		expect(sum).toEqual(labels.classes.map((label) => (label === 0 ? 0 : 1)));
	});
});
