import sharp from 'sharp';
import { hexFromLab, type Lab65 } from '../../src/colour/lab65.ts';

/** A plain PNG of one colour. */
export const plainPng = (width: number, height: number, colour: string): Promise<Buffer> =>
	sharp({ create: { width, height, channels: 3, background: colour } })
		.png()
		.toBuffer();

/** A cut-out: a block of cloth of one colour in the middle of transparent ground. */
export async function cutOut(lab: Lab65, size = 400): Promise<Buffer> {
	const cloth = await plainPng(size / 2, Math.round(size * 0.7), hexFromLab(lab));
	return sharp({ create: { width: size, height: size, channels: 4, background: { r: 0, g: 0, b: 0, alpha: 0 } } })
		.composite([{ input: cloth, left: size / 4, top: Math.round(size * 0.15) }])
		.png()
		.toBuffer();
}

/** A rust block on a dark floor with white paper above and a grey card below at its left, as a phone shows them; `wider` makes another picture of the same. */
export async function withSheetAndCard(wider = 0): Promise<Buffer> {
	const [paper, card, cloth] = await Promise.all([
		plainPng(100, 100, '#e8e6e0'),
		plainPng(100, 100, '#a8a6a0'),
		plainPng(200, 300, hexFromLab([45, 38, 40])),
	]);
	return sharp({ create: { width: 600 + wider, height: 400, channels: 3, background: '#3a3630' } })
		.composite([
			{ input: paper, left: 10, top: 10 },
			{ input: card, left: 10, top: 290 },
			{ input: cloth, left: 170, top: 50 },
		])
		.png()
		.toBuffer();
}
