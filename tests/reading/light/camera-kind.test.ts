import { describe, expect, it } from 'vitest';
import { cameraKindOf } from '../../../src/reading/light/camera-kind.ts';

const LARGE = 4032;

describe('what took a picture', () => {
	// Makers and models as their EXIF spells them: common practice, no source.
	it.each<[string | null, string | null, 'phone' | 'camera']>([
		['Apple', 'iPhone 13 mini', 'phone'],
		['HUAWEI', 'ELE-L29', 'phone'],
		['Xiaomi', 'Redmi Note 9', 'phone'],
		['samsung', 'SM-G991B', 'phone'],
		['Google', 'Pixel 7', 'phone'],
		['Sony', 'XQ-BC52', 'phone'],
		['a maker of phones that nobody knows yet', 'Z1', 'phone'],
		['Canon', 'Canon EOS 6D', 'camera'],
		['NIKON CORPORATION', 'NIKON D750', 'camera'],
		['FUJIFILM', 'X-T30', 'camera'],
		['SONY', 'ILCE-7M3', 'camera'],
		['SAMSUNG', 'NX300', 'camera'],
		['OM Digital Solutions', 'OM-1', 'camera'],
		['Panasonic', 'LUMIX DMC-CM1', 'phone'],
		[null, null, 'phone'],
	])('%s %s is a %s', (make, model, kind) => {
		expect(cameraKindOf({ make, model }, LARGE)).toBe(kind);
	});

	it('is no phone where the file says nothing and the picture is a miniature, but a phone where it says so', () => {
		expect(cameraKindOf({ make: null, model: null }, 480)).toBe('camera');
		expect(cameraKindOf({ make: 'Apple', model: 'iPhone' }, 480)).toBe('phone');
	});
});
