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
 * A demo picture enlarged to a phone's size, with some noise. Still lighter than a phone's own file (0.9 MB for a 12-megapixel JPEG): real
 * ones take longer to decode, here and in the floor alike.
 */
export async function phoneSized(size: SizeName, format: 'jpeg' | 'png' | 'webp'): Promise<Buffer> {
	const [width, height] = SIZES[size];
	const noise = await sharp({
		create: {
			width: 512,
			height: 512,
			channels: 3,
			background: '#808080',
			noise: { type: 'gaussian', mean: 128, sigma: 6 },
		},
	})
		.png()
		.toBuffer();
	const picture = sharp(readFileSync(demoPhotos()[0]!))
		.resize(width, height, { fit: 'cover' })
		.composite([{ input: noise, tile: true, blend: 'soft-light' }]);
	return picture.toFormat(format, { quality: 88, compressionLevel: 3 }).toBuffer();
}
