import { describe, expect, it } from 'vitest';
import { fileTitle, isMachineTitle } from '../../src/app/file-title.ts';

describe('a first name from a file', () => {
	it('is the file without folder and ending', () => {
		expect(fileTitle('C:\\clothes\\Rust coat.jpeg')).toBe('Rust coat');
		expect(fileTitle('shelf/two.grey/socks.v2.png')).toBe('socks.v2');
	});

	// The first two as the DCF standard (JEITA CP-3461) lets cameras name files: four free characters and a count; the others are common practice, no source.
	it.each([
		'DSC_0001',
		'IMG_4711',
		'P1010001',
		'IMG_20250812_134455',
		'IMG-20250812-WA0007',
		'PXL_20250812_134455123.MP',
		'20250812_134455',
		'WhatsApp Image 2025-08-12 at 13.44.55',
		'0a2f6a3c-4c1e-4f0b-9b1d-1c2d3e4f5a6b',
		'DSC_0001 (1)',
	])('nobody chose "%s"', (title) => expect(isMachineTitle(title)).toBe(true));

	it.each(['Rust coat', 'coat 2', 'jean 501', 'Photo', 'grey', 'IMG_4711 blue coat', 'Größe 38', ''])(
		'somebody chose "%s", or it holds no count',
		(title) => expect(isMachineTitle(title)).toBe(false),
	);
});
