const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;

/** Whether the text is a day of the Gregorian calendar as ISO 8601 writes it, 0001-01-01 to 9999-12-31; 2026-02-31 is none. */
export function isDay(text: string): boolean {
	const parts = DAY.exec(text);
	if (!parts) return false;
	const [year, month, day] = parts.slice(1).map(Number) as [number, number, number];
	return year >= 1 && month >= 1 && month <= 12 && day >= 1 && day <= daysInMonth(year, month);
}

const isLeapYear = (year: number): boolean => year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);

const daysInMonth = (year: number, month: number): number =>
	month === 2 ? (isLeapYear(year) ? 29 : 28) : [4, 6, 9, 11].includes(month) ? 30 : 31;
