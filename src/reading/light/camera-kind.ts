import type { CameraKind } from '../../wardrobe/words/light.ts';

/** What a file says of what took it, each null where it says nothing. */
export type CameraNames = { readonly make: string | null; readonly model: string | null };

/** Makers of cameras, as their EXIF spells them (common practice, no source). A maker of phones alone needs no line: phone is the default. */
const CAMERA_MAKERS =
	/^(canon|nikon|fuji|panasonic|olympus|om digital|pentax|ricoh|leica|hasselblad|sigma|kodak|eastman|casio|konica|minolta|gopro|dji|phase one|mamiya|epson|raspberry|arducam|logitech)/i;
/** Makers of both: their cameras' models (Sony's ILCE, DSC and the like; Samsung's NX). */
const CAMERA_MODELS = /^(ilce|ilca|ilme|dsc|slt|dslr|nex|zv-|nx\d|nx mini|ek-gn|wb\d|wb-|st\d|es\d|digimax)/i;
/** Some phones carry a camera maker's name. */
const PHONE_MODELS = /(phone|lumix dmc-cm|leitz)/i;

/**
 * A picture without a word on its camera and of at most this longest side is no phone's own file and no messenger's copy of one (those keep 1,280
 * pixels and more; common practice, no source): a shop's thumbnail, a drawing, a render. Nothing is known of its curve, and none is undone.
 */
const SMALLEST_PHONE_SIDE_PX = 512;

/** What took the picture, by what its file says; a phone where the file says nothing and the picture is no miniature. */
export function cameraKindOf({ make, model }: CameraNames, longestSidePx: number): CameraKind {
	if (!make && !model) return longestSidePx <= SMALLEST_PHONE_SIDE_PX ? 'camera' : 'phone';
	if (PHONE_MODELS.test(model ?? '')) return 'phone';
	return CAMERA_MAKERS.test(make ?? '') || CAMERA_MODELS.test(model ?? '') ? 'camera' : 'phone';
}
