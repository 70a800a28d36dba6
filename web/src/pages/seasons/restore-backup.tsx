import { useState } from 'react';
import { say } from '../../../../src/language/speak.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';

/** How often the program is asked whether it has started anew. */
const ASK_AGAIN_MS = 500;

/** Waits until the program answers again, over the archive. */
async function startedAnew(): Promise<void> {
	for (;;) {
		await new Promise((resolve) => setTimeout(resolve, ASK_AGAIN_MS));
		const answers = await call('getStatus', {}).then(
			() => true,
			() => false,
		);
		if (answers) return;
	}
}

const send = (archive: File) => call('restoreBackup', { raw: new Blob([archive], { type: 'application/x-tar' }) });

/** Goes back to an archive: chosen, then asked once more with what it means, then checked by the program before anything is changed. */
export function RestoreBackup() {
	const [archive, setArchive] = useState<File | null>(null);
	const [isBack, setBack] = useState(false);
	const restore = useChange(send, () => void startedAnew().then(() => setBack(true)));
	const done = restore.output;
	return (
		<details>
			<summary>{say('backupPage.restore')}</summary>
			<div className="stack">
				<label className="field">
					<span className="field-label">{say('backupPage.choose')}</span>
					<input
						type="file"
						accept=".tar,application/x-tar"
						onChange={(event) => setArchive(event.target.files?.[0] ?? null)}
					/>
				</label>
				{archive && !done ? (
					<>
						<p>{say('backupPage.meaning', { name: archive.name })}</p>
						<Button onPress={() => restore.run(archive)} isPending={restore.busy}>
							{say(restore.busy ? 'backupPage.checking' : 'backupPage.restoreIt')}
						</Button>
					</>
				) : null}
				<div role="status">
					{done ? (
						<p>
							{say('backupPage.done', { count: done.files })} {say('backupPage.aside', { folder: done.setAside })}{' '}
							{done.findings.join(' ')} {isBack ? null : say('backupPage.starting')}
						</p>
					) : null}
				</div>
				{done && isBack ? (
					<Button look="main" onPress={() => location.assign('/seasons')}>
						{say('backupPage.show')}
					</Button>
				) : null}
				<Problem of={restore.problem} />
			</div>
		</details>
	);
}
