import { keptForm, keptList } from './kept-form.ts';
import { keepsSentences, spokenLanguage } from './speak.ts';

/** A number as the language writes it, with at most two decimals: 1,234.5 in English, 1.234,5 in German (Unicode CLDR, through Intl). */
export const numberText = (value: number): string =>
	new Intl.NumberFormat(spokenLanguage(), { maximumFractionDigits: 2 }).format(value);

/** An amount in the user's own currency, which is not told: two decimals. */
export const moneyText = (value: number): string =>
	new Intl.NumberFormat(spokenLanguage(), { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(value);

/** Names in a row as the language lists them: shirt, skirt and coat; Hemd, Rock und Mantel. */
export const listText = (names: readonly string[]): string =>
	keepsSentences() ? keptList(names) : new Intl.ListFormat(spokenLanguage(), { type: 'conjunction' }).format(names);

/** One of several as the language says it: shirt or top; Hemd oder Oberteil. */
export const eitherText = (names: readonly string[]): string =>
	new Intl.ListFormat(spokenLanguage(), { type: 'disjunction' }).format(names);

/** A moment (ISO 8601) as the language and the reader's own clock write it: 14 Mar 2026, 18:05. */
export const momentText = (iso: string): string =>
	new Intl.DateTimeFormat(spokenLanguage(), { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso));

/** An ISO day (2026-03-14) as the language writes days: 14 Mar 2026, Mar 14, 2026, 14.03.2026. Anything else is given back as it is. */
export function dayText(isoDay: string): string {
	if (keepsSentences()) return keptForm('day', { day: isoDay });
	const day = new Date(`${isoDay.slice(0, 10)}T12:00:00Z`);
	if (Number.isNaN(day.getTime())) return isoDay;
	return new Intl.DateTimeFormat(spokenLanguage(), { dateStyle: 'medium', timeZone: 'UTC' }).format(day);
}
