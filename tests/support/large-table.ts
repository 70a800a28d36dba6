/** A table of garments (CSV) with so many lines, each another piece; `notes` of each end with these words. */
export const tableOfGarments = (lines: number, notes = ''): string =>
	[
		'name,kind,place,price,boughtOn,yearParts,notes',
		...Array.from(
			{ length: lines },
			(_, line) => `Piece ${line},shirt,rail,${line % 90},2025-03-14,spring summer,"from, box ${line}${notes}"`,
		),
	].join('\n');
