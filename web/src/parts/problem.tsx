/** What went wrong, in words, beside the thing it concerns; nothing when nothing did. */
export function Problem({ of }: { of: { readonly message: string } | null | undefined }) {
	if (!of) return null;
	return (
		<p className="problem" role="alert">
			<strong>That did not work.</strong> {of.message}
		</p>
	);
}
