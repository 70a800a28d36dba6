import jsQrModule from 'jsqr';
import { describe, expect, it } from 'vitest';
import { qrPicture } from '../../src/app/qr-picture.ts';

// CommonJS: what is imported is the module, or its default, as the loader sees it.
const jsQr = ('default' in jsQrModule ? jsQrModule.default : jsQrModule) as unknown as typeof import('jsqr').default;

const PIXELS_A_MODULE = 4;

/** The picture drawn as a camera would see it: RGBA, dark squares on white. */
function drawn({ sideModules, path }: ReturnType<typeof qrPicture>) {
	const side = sideModules * PIXELS_A_MODULE;
	const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
	for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
		for (let row = 0; row < PIXELS_A_MODULE; row++)
			for (let column = 0; column < PIXELS_A_MODULE; column++) {
				const at = ((Number(y) * PIXELS_A_MODULE + row) * side + Number(x) * PIXELS_A_MODULE + column) * 4;
				pixels.fill(0, at, at + 3);
			}
	return { pixels, side };
}

describe('the QR picture of an address', () => {
	// Read by jsQR, a reader of its own (npm, Apache-2.0) that shares nothing with what draws it.
	it.each(['http://192.168.1.5:4810/', 'http://10.0.0.200:65535/', 'http://172.16.254.1:4310/'])(
		'%s is read back letter by letter',
		(address) => {
			const { pixels, side } = drawn(qrPicture(address));
			expect(jsQr(pixels, side, side)?.data).toBe(address);
		},
	);
});
