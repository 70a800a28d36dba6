/** The one function that the bench calls; the package has no types of its own. */
declare module 'color-diff' {
	type Lab = { readonly L: number; readonly a: number; readonly b: number };
	/** CIEDE2000. */
	export function diff(one: Lab, other: Lab): number;
}
