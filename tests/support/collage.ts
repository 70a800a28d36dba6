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

const render = (name: string) => fileURLToPath(new URL(`../../fixtures/renders/${name}`, import.meta.url));

/** The rendered cloth that a picture shows, all else transparent. */
async function cutOut(name: string): Promise<Buffer> {
	const mask = await sharp(render(`${name}.mask.png`))
		.toColourspace('b-w')
		.raw()
		.toBuffer();
	const { width, height } = await sharp(render(`${name}.jpg`)).metadata();
	const whole = await sharp(render(`${name}.jpg`))
		.joinChannel(mask, { raw: { width, height, channels: 1 } })
		.png()
		.toBuffer();
	return sharp(whole)
		.trim({ background: { r: 0, g: 0, b: 0, alpha: 0 } })
		.toBuffer();
}

/** One rendered garment in the middle of a sheet of paper, and another one over the lower edge of it. */
export async function overlapping(below: string, above: string): Promise<Buffer> {
	const [first, second] = await Promise.all(
		[below, above].map(async (name) =>
			sharp(await cutOut(name))
				.resize({ height: 380 })
				.toBuffer({ resolveWithObject: true }),
		),
	);
	const sheet = { width: 600, height: 800 };
	const middle = (width: number) => Math.round((sheet.width - width) / 2);
	return sharp({ create: { ...sheet, channels: 3, background: '#d9d4cc' } })
		.composite([
			{ input: first!.data, left: middle(first!.info.width), top: 60 },
			{ input: second!.data, left: middle(second!.info.width), top: 400 },
		])
		.png()
		.toBuffer();
}
