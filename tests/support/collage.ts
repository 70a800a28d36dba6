import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

/** The file of one of the demo's photos, by its name without ending. */
const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

/** Two of the demo's photos side by side, as in a collage. */
export async function collage(left: string, right: string): Promise<Buffer> {
	const half = (name: string) => sharp(demo(name)).resize(400, 600, { fit: 'cover' }).toBuffer();
	return sharp({ create: { width: 800, height: 600, channels: 3, background: '#fff' } })
		.composite([
			{ input: await half(left), left: 0, top: 0 },
			{ input: await half(right), left: 400, top: 0 },
		])
		.png()
		.toBuffer();
}
