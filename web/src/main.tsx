import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import './style/tokens.css';
import './style/base.css';
import './style/controls.css';
import './style/parts.css';
import './style/shell.css';

const root = document.getElementById('root');
if (!root) throw new TypeError('expected an element with id "root" in index.html');
createRoot(root).render(
	<StrictMode>
		<App />
	</StrictMode>,
);
