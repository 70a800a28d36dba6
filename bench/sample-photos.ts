import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const demoFolder = fileURLToPath(new URL('../demo-images/', import.meta.url));

export const SIZES = { '2 MP': [1225, 1633], '12 MP': [3000, 4000], '48 MP': [6000, 8000] } as const;
export type SizeName = keyof typeof SIZES;

/** Demo pictures, by name. */
export const demoPhotos = (): string[] =>
	readdirSync(demoFolder, { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.jpg'))
		.sort()
		.map((name) => demoFolder + name);

/**
 * How heavy a photo is made: `phone`, with grain as a phone's sensor and sharpening leave it (a 12-megapixel JPEG of 3 MB; phones write 2 to 5 of them,
 * from memory), or `light`, with so little that it is a third of that. PNG holds all grain at full weight: only the light one stays within our limit.
 */
export type Weight = 'phone' | 'light';
const GRAIN: Readonly<Record<Weight, { sigma: number; quality: number }>> = {
	phone: { sigma: 20, quality: 90 },
	light: { sigma: 6, quality: 88 },
};

/** A demo picture enlarged to a phone's size, with grain. */
export async function phoneSized(size: SizeName, format: 'jpeg' | 'png' | 'webp', weight: Weight): Promise<Buffer> {
	const [width, height] = SIZES[size];
	const { sigma, quality } = GRAIN[weight];
	const grain = await sharp({
		create: {
			width: 512,
			height: 512,
			channels: 3,
			background: '#808080',
			noise: { type: 'gaussian', mean: 128, sigma },
		},
	})
		.png()
		.toBuffer();
	const picture = sharp(readFileSync(demoPhotos()[0]!))
		.resize(width, height, { fit: 'cover' })
		.composite([{ input: grain, tile: true, blend: 'soft-light' }]);
	return picture.toFormat(format, { quality, compressionLevel: 3 }).toBuffer();
}
