/** A picture of three bytes a pixel as planes of red, green and blue, 0..1. */
export function planesOf(rgb: Uint8Array): Float32Array {
	const plane = rgb.length / 3;
	const values = new Float32Array(rgb.length);
	for (let channel = 0; channel < 3; channel++) {
		const start = channel * plane;
		for (let i = 0; i < plane; i++) values[start + i] = rgb[i * 3 + channel]! / 255;
	}
	return values;
}
