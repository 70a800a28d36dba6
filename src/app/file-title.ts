/** A first name from a file's: without folder and ending. */
export const fileTitle = (fileName: string): string =>
	fileName
		.replace(/^.*[\\/]/, '')
		.replace(/\.[A-Za-z0-9]{1,5}$/, '')
		.slice(0, 200);

/** What cameras, phones and messengers put before a number; common practice, no source but for DSC and IMG, which follow the DCF standard (JEITA CP-3461). */
const MAKERS_WORDS =
	/\b(?:fb|img|dsc|dscn|dscf|pict|pxl|mvimg|vid|photo|image|foto|bild|picture|screenshot|whatsapp|signal|at|am|pm|wa|hdr|mp|burst|portrait|edit|edited|copy|scan)\b/gi;

/** Long runs of hexadecimal digits: ids made by programs. */
const PROGRAM_ID = /[0-9a-f-]{16,}/gi;

/** Whether nobody chose this title: a camera's count, a date, an id. */
export const isMachineTitle = (title: string): boolean =>
	/\d/.test(title) &&
	!/\p{L}{2,}/u.test(
		title
			.replace(PROGRAM_ID, ' ')
			.replace(/[_\d]+/g, ' ')
			.replace(MAKERS_WORDS, ' '),
	);
