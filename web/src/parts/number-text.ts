/** The number typed, or null for an empty field or something that is none. */
export function numberOrNull(text: string): number | null {
	const number = Number(text.replace(',', '.'));
	return text.trim() === '' || !Number.isFinite(number) ? null : number;
}
