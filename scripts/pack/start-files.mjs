// The one file of a download that a person double-clicks: it starts the program with the runtime beside it and opens the page.

const shell = (folder) => `#!/bin/sh
# Starts Dyelot with the runtime in this folder and opens its page. Nothing is installed and nothing leaves this machine.
cd "$(dirname "$0")" || exit 1
exec ./${folder}/node app/bin/dyelot.mjs serve --open "$@"
`;

const windows = (folder) =>
	[
		'@echo off',
		'rem Starts Dyelot with the runtime in this folder and opens its page. Nothing is installed and nothing leaves this machine.',
		'cd /d "%~dp0"',
		`"${folder}\\node.exe" app\\bin\\dyelot.mjs serve --open %*`,
		'if errorlevel 1 pause',
		'',
	].join('\r\n');

/** Name and text of the start file for a platform as Node names it; `folder` holds the runtime. */
export const startFile = (platform, folder) =>
	({
		linux: { name: 'dyelot.sh', text: shell(folder) },
		darwin: { name: 'Dyelot.command', text: shell(folder) },
		win32: { name: 'Dyelot.cmd', text: windows(folder) },
	})[platform];
