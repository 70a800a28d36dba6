import { slotOfKind } from './kind.ts';
import type { Reading } from './reading.ts';
import type { Inspiration } from './season.ts';

/** The reading of a picture with what somebody said of its pieces: the kind that was told wins, and the piece lies where that kind is worn. */
export function toldReading(reading: Reading, told: Inspiration['pieceKinds'] = []): Reading {
	if (!reading.pieces || told.length === 0) return reading;
	const pieces = reading.pieces.map((piece, index) => {
		const word = told.find((one) => one.piece === index);
		if (!word) return piece;
		const { kind } = word;
		return { ...piece, slot: slotOfKind(kind), kind, kinds: [{ kind, probability: 1 }] };
	});
	return { ...reading, pieces };
}
