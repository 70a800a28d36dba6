/** Said while something is on its way; drawn only when it takes long enough to be noticed. */
export function Loading({ what }: { what: string }) {
	return (
		<p className="loading quiet italic" role="status">
			Fetching {what} …
		</p>
	);
}
