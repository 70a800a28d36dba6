import { type FormEvent, useState } from 'react';
import { say } from '../../../src/language/speak.ts';
import { useChange } from '../api/change.ts';
import { refreshSoon } from '../api/refresh.ts';
import { Button } from '../parts/button.tsx';
import { Field } from '../parts/field.tsx';
import { Problem } from '../parts/problem.tsx';
import { ask } from './host-calls.ts';

/** The type of an archive, whatever the system calls it. */
const TAR = 'application/x-tar';

/** A home that comes along from elsewhere, as an archive; called as its file is. */
export function BringHome() {
	const [file, setFile] = useState<File | null>(null);
	const bring = useChange(
		(archive: File) => {
			const name = archive.name.replace(/\.tar$/, '').slice(0, 80) || say('hosting.firstHome');
			const body = archive.slice(0, archive.size, TAR);
			return ask<{ id: string }>('POST', `/homes/bring?${new URLSearchParams({ name })}`, body);
		},
		() => refreshSoon(),
	);
	const send = (event: FormEvent) => {
		event.preventDefault();
		if (file) bring.run(file);
	};
	return (
		<form className="stack" onSubmit={send}>
			<p className="quiet">{say('doorway.bringPurpose')}</p>
			<Field label={say('doorway.archive')}>
				{(ids) => (
					<input
						{...ids}
						type="file"
						accept=".tar"
						required
						onChange={(event) => setFile(event.target.files?.[0] ?? null)}
					/>
				)}
			</Field>
			<p>
				<Button type="submit" isPending={bring.busy}>
					{bring.busy ? say('doorway.bringing') : say('doorway.bring')}
				</Button>
			</p>
			<Problem of={bring.problem} />
		</form>
	);
}
