import { Button as AriaButton, type ButtonProps } from 'react-aria-components/Button';

type Look = 'main' | 'plain' | 'bare';

/**
 * A button: `main` for the one thing a page wants done, `bare` for small things in a row of text. `isPending` while what it does is on its way: it takes
 * no press then, but keeps the focus, which a disabled one loses.
 */
export function Button({
	look = 'plain',
	small = false,
	pressed,
	className,
	...props
}: Omit<ButtonProps, 'className' | 'style'> & {
	look?: Look;
	small?: boolean;
	/** For a button that stays down: whether it is. */
	pressed?: boolean;
	className?: string;
}) {
	const classes = ['button', look !== 'plain' && `button-${look}`, small && 'button-small', className];
	return (
		<AriaButton
			{...props}
			{...(pressed === undefined ? {} : { 'aria-pressed': pressed })}
			className={classes.filter(Boolean).join(' ')}
		/>
	);
}
