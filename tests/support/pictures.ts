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
