/** One way to spoil a file. Pure: depends on the bytes and the random numbers. */
type Mutation = (bytes: Buffer, random: () => number) => Buffer;

const pick = (random: () => number, count: number): number => Math.floor(random() * count);

/** The ways, by what they imitate. */
const MUTATIONS: Readonly<Record<string, Mutation>> = {
	'cut short': (bytes, random) => bytes.subarray(0, pick(random, bytes.length)),
	'a few bytes flipped': (bytes, random) => {
		const spoilt = Buffer.from(bytes);
		for (let i = 0; i < 1 + pick(random, 12); i++) spoilt[pick(random, spoilt.length)]! ^= 1 << pick(random, 8);
		return spoilt;
	},
	'its head flipped': (bytes, random) => {
		const spoilt = Buffer.from(bytes);
		for (let i = 0; i < 1 + pick(random, 4); i++)
			spoilt[pick(random, Math.min(256, spoilt.length))] = pick(random, 256);
		return spoilt;
	},
	'a stretch of zeros': (bytes, random) => {
		const spoilt = Buffer.from(bytes);
		const from = pick(random, spoilt.length);
		return spoilt.fill(0, from, Math.min(spoilt.length, from + 1 + pick(random, 4096)));
	},
	'a stretch of noise': (bytes, random) => {
		const spoilt = Buffer.from(bytes);
		const from = pick(random, spoilt.length);
		for (let at = from; at < Math.min(spoilt.length, from + 512); at++) spoilt[at] = pick(random, 256);
		return spoilt;
	},
	'a stretch missing': (bytes, random) => {
		const from = pick(random, bytes.length);
		return Buffer.concat([bytes.subarray(0, from), bytes.subarray(from + 1 + pick(random, 2048))]);
	},
	'a stretch twice': (bytes, random) => {
		const from = pick(random, bytes.length);
		const to = Math.min(bytes.length, from + 1 + pick(random, 2048));
		return Buffer.concat([bytes.subarray(0, to), bytes.subarray(from)]);
	},
	'two stretches exchanged': (bytes, random) => {
		const middle = 1 + pick(random, bytes.length - 1);
		return Buffer.concat([bytes.subarray(middle), bytes.subarray(0, middle)]);
	},
	'a length that lies': (bytes, random) => {
		const spoilt = Buffer.from(bytes);
		const lies = [0, 1, 0x7fffffff, 0xffffffff, 0x80000000, 65_535];
		spoilt.writeUInt32BE(lies[pick(random, lies.length)]!, pick(random, Math.max(1, Math.min(600, spoilt.length - 4))));
		return spoilt;
	},
	'rubbish after it': (bytes, random) =>
		Buffer.concat([bytes, Buffer.from(Array.from({ length: 1 + pick(random, 4096) }, () => pick(random, 256)))]),
};

/** A spoilt copy of a file, and how it was spoilt; the ways take turns. */
export function mutated(bytes: Buffer, index: number, random: () => number): { how: string; bytes: Buffer } {
	const ways = Object.entries(MUTATIONS);
	const [how, spoil] = ways[index % ways.length]!;
	return { how, bytes: spoil(bytes, random) };
}
