import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { Speaking } from './language/speaking.tsx';

const screen = document.getElementById('screen');
if (screen === null) throw new Error('defect: the page has no screen to draw on');
createRoot(screen).render(
  <Speaking>
    <App />
  </Speaking>,
);
