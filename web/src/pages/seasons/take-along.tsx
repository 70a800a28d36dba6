import { say } from '../../../../src/language/speak.ts';
import { downloadOf } from '../../api/call.ts';
import { RestoreBackup } from './restore-backup.tsx';

/** What can be taken away in open formats, the backup, and the way back from one. */
export function TakeAlong() {
	return (
		<section className="section stack" aria-labelledby="take-away">
			<h2 id="take-away">{say('backupPage.title')}</h2>
			<p className="quiet">{say('backupPage.how')}</p>
			<p className="row">
				<a className="button" href={downloadOf('getBackup')} download>
					{say('backupPage.archive')}
				</a>
				<a href={downloadOf('getEverything')} download>
					{say('backupPage.json')}
				</a>
				<a href={downloadOf('exportGarments')} download>
					{say('backupPage.garments')}
				</a>
			</p>
			<RestoreBackup />
		</section>
	);
}
