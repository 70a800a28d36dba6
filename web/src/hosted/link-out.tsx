import { useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { Button } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';

/** A link to give to somebody: shown once, to copy or to select. */
export function LinkOut({ link }: { link: string }) {
	const [copied, setCopied] = useState(false);
	// Over a plain line browsers have no clipboard: there it is selected and copied by hand.
	const copy = async () => {
		await navigator.clipboard.writeText(link);
		setCopied(true);
	};
	return (
		<div className="stack" role="status">
			<p>{say('doorway.linkOnce')}</p>
			<Field label={say('doorway.link')}>
				{(ids) => (
					<input {...ids} className="input link-out" readOnly value={link} onFocus={(event) => event.target.select()} />
				)}
			</Field>
			{'clipboard' in navigator ? (
				<p>
					<Button small onPress={copy}>
						{copied ? say('doorway.copied') : say('doorway.copy')}
					</Button>
				</p>
			) : null}
		</div>
	);
}
