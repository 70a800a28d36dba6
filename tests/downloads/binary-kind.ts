import { closeSync, openSync, readSync } from 'node:fs';

/** What a compiled file is made for: its format and processor, or null for a file that is none. */
export type BinaryKind = { readonly format: 'elf' | 'pe' | 'mach-o'; readonly arch: string };

/** Processor numbers of the System V ABI (e_machine), the PE/COFF specification (Machine) and Apple's mach/machine.h (cputype). */
const ARCHES = {
	elf: new Map([
		[62, 'x64'],
		[183, 'arm64'],
	]),
	pe: new Map([
		[0x8664, 'x64'],
		[0xaa64, 'arm64'],
	]),
	'mach-o': new Map([
		[0x01000007, 'x64'],
		[0x0100000c, 'arm64'],
	]),
} as const;

function headOf(path: string): Buffer {
	const head = Buffer.alloc(4096);
	const file = openSync(path, 'r');
	try {
		return head.subarray(0, readSync(file, head, 0, head.length, 0));
	} finally {
		closeSync(file);
	}
}

/** Reads the first bytes of a file; an unknown processor is named by its number. */
export function binaryKind(path: string): BinaryKind | null {
	const head = headOf(path);
	if (head.length < 64) return null;
	const named = (format: BinaryKind['format'], machine: number): BinaryKind => ({
		format,
		arch: ARCHES[format].get(machine) ?? `processor ${machine}`,
	});
	if (head.readUInt32BE(0) === 0x7f454c46) return named('elf', head.readUInt16LE(18));
	if (head.readUInt32LE(0) === 0xfeedfacf) return named('mach-o', head.readUInt32LE(4));
	const peAt = head.readUInt16BE(0) === 0x4d5a ? head.readUInt32LE(0x3c) : head.length;
	if (peAt + 6 > head.length || head.readUInt32BE(peAt) !== 0x50450000) return null;
	return named('pe', head.readUInt16LE(peAt + 4));
}
