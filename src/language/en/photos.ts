/** What a photo file is refused for. */
export const PHOTOS = {
	photoFiles: {
		transparent: 'Expected something to see in the photo; all of it is transparent.',
		unopened: 'Expected a photo that can be opened for "{{path}}"; {{what}}.',
		tooManyPixels: 'Expected at most {{most}} megapixels for one photo; this one has {{shown}}.',
		undecoded: 'Expected a whole photo; this {{format}} cannot be decoded to its end ({{error}}).',
		empty: 'Expected {{formats}}; the file is empty.',
		tooManyBytes: 'Expected at most {{most}} for one photo; this file has {{shown}}.',
		svg: 'Expected {{formats}}; this is an SVG drawing, which shows no cloth.',
		noPhoto: 'Expected {{formats}}; the bytes of this file are none, whatever its name says.',
		otherFormat: 'Expected {{formats}}; this file is {{format}}.',
		tooSlow: 'Expected to read this photo within {{seconds}} s; it took longer and was stopped.',
		crashed: 'Expected to read this photo; the reader broke down on it ({{cause}}). The file is kept.',
		closing: 'the program is closing',
		formats: 'a photo (JPEG, PNG, WebP, AVIF, GIF, TIFF or HEIC)',
		megabytes: '{{size}} MB',
	},
	unopened: {
		EACCES: 'you may not read it',
		EISDIR: 'it is a folder',
		ENOENT: 'there is no such file',
		ENOTDIR: 'a part of its path is a file, no folder',
		other: 'the system refuses it ({{code}})',
	},
} as const;
