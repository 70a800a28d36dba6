import { say } from '../../../src/language/speak.ts';
/** What went wrong, in words, beside the thing it concerns; nothing when nothing did. */
export function Problem({ of }: { of: { readonly message: string } | null | undefined }) {
	if (!of) return null;
	return (
		<p className="problem" role="alert">
			<strong>{say('frame.failed')}</strong> {of.message}
		</p>
	);
}
