/** The page that leads a person through trusting this server on a tablet. One file, no screens. */
import { type Language, phrase, type Voice } from '#texts';
import { escaped, qrSvg } from './qr.ts';
import { DEVICES } from './trust-steps.ts';

export type TrustPage = {
  readonly language: Language;
  readonly voice: Voice;
  /** What the certificate calls itself. */
  readonly authorityName: string;
  readonly fingerprint: string;
  readonly urls: readonly string[];
  readonly checkUrl: string;
  /** Whether this very page came over HTTPS. */
  readonly isSecure: boolean;
};

export const TRUST_PATHS = {
  page: '/trust',
  certificate: '/trust/counterpoise-authority.crt',
  check: '/trust/check.js',
} as const;

const STYLE =
  'body{font:18px/1.5 system-ui,sans-serif;margin:0 auto;max-width:46rem;padding:1rem;' +
  'color:#1c1a17;background:#fbf9f4;overflow-wrap:anywhere}h1{font-size:1.7rem;line-height:1.2}' +
  'h2{font-size:1.2rem;margin-top:2rem}.qr{width:14rem;max-width:100%;display:block}' +
  '.big{display:inline-block;font-size:1.15rem;padding:.8rem 1rem;border:2px solid;' +
  'border-radius:4px;color:inherit;background:none;min-height:48px;box-sizing:border-box}' +
  'code{font-size:1.05rem}summary{min-height:48px;padding:.6rem 0;cursor:pointer;' +
  'box-sizing:border-box;font-weight:600}li{margin:.5rem 0}' +
  '.notice{border-left:6px solid;padding:.2rem 1rem}' +
  '@media(prefers-color-scheme:dark){body{color:#ece7dc;background:#191714}}';

/** Groups of four digits, four to a line: what a person can compare aloud. */
const inGroups = (fingerprint: string): string => {
  const groups = fingerprint.replaceAll(':', '').match(/.{4}/g) ?? [];
  return [0, 4, 8, 12].map((from) => groups.slice(from, from + 4).join(' ')).join('<br>');
};

export const trustPage = (page: TrustPage): string => {
  const { voice, language, urls } = page;
  const say = (text: string): string => escaped(text);
  const title = say(phrase(voice, 'Trust this server'));
  const [first = ''] = urls;
  return [
    `<!doctype html><html lang="${language}"><head><meta charset="utf-8">`,
    '<meta name="viewport" content="width=device-width,initial-scale=1">',
    `<title>${title}</title><style>${STYLE}</style></head><body><main><h1>${title}</h1>`,
    whereFrom(page),
    certificatePart(page),
    ...devicePart(voice),
    `<h2>${say(phrase(voice, 'Then open Counterpoise'))}</h2>`,
    ...urls.map((url) => `<p><a class="big" href="${escaped(url)}">${escaped(url)}</a></p>`),
    qrSvg(first, phrase(voice, 'Address as QR: {url}', { url: first })),
    checkPart(page),
    `<h2>${say(phrase(voice, 'What you agree to'))}</h2>`,
    `<p>${say(
      phrase(
        voice,
        'The authority was made by this server and its key never leaves it. It ' +
          'can vouch for addresses inside a building and for the names of this ' +
          'house only. Whoever takes the server can pose as it: then remove the ' +
          'certificate from every device and make a new one.',
      ),
    )}</p>`,
    '</main></body></html>',
  ].join('\n');
};

const whereFrom = ({ voice, isSecure }: TrustPage): string => {
  const words = isSecure
    ? phrase(
        voice,
        'This page came over HTTPS. If the browser showed no warning on the way ' +
          'here, now or before, this device trusts the server and there is nothing ' +
          'left to do.',
      )
    : phrase(
        voice,
        'This page came over plain HTTP, so somebody on the network could have ' +
          'changed it. Compare the fingerprint with the one that the server shows ' +
          'in its own window or on its own screen. Where they differ, stop, and ' +
          'tell who looks after the server.',
      );
  return `<p class="notice">${escaped(words)}</p>`;
};

const certificatePart = ({ voice, authorityName, fingerprint }: TrustPage): string =>
  [
    `<h2>${escaped(phrase(voice, 'The certificate'))}</h2>`,
    `<p><a class="big" href="${TRUST_PATHS.certificate}">`,
    `${escaped(phrase(voice, 'Download the certificate of {name}', { name: authorityName }))}`,
    '</a></p>',
    `<p>${escaped(phrase(voice, 'Its fingerprint (SHA-256):'))}<br><code>`,
    `${inGroups(fingerprint)}</code></p>`,
  ].join('');

const devicePart = (voice: Voice): readonly string[] => [
  `<h2>${escaped(phrase(voice, 'On your device'))}</h2>`,
  `<p>${escaped(
    phrase(
      voice,
      'Menus differ from version to version; look for the same words nearby. ' +
        'Most of these steps are from memory. Do it once on each device of the ' +
        'house.',
    ),
  )}</p>`,
  ...DEVICES.map(
    ({ name, steps }) =>
      `<details><summary>${escaped(phrase(voice, name))}</summary><ol>` +
      `${steps.map((step) => `<li>${escaped(phrase(voice, step))}</li>`).join('')}</ol></details>`,
  ),
];

/** Over plain HTTP the page asks the server over HTTPS: it is answered only where it is trusted. */
const checkPart = ({ voice, isSecure, checkUrl: url }: TrustPage): string => {
  if (isSecure) return '';
  const data = {
    url,
    checking: phrase(voice, 'Checking …'),
    trusted: phrase(
      voice,
      'This device reached the server over HTTPS. Unless somebody once passed a' +
        ' warning on it, it trusts the server.',
    ),
    refused: phrase(
      voice,
      'This device does not trust the server yet, or does not reach it over HTTPS.',
    ),
  };
  const attributes = Object.entries(data).map(([name, text]) => `data-${name}="${escaped(text)}"`);
  return (
    `<p><button class="big" type="button" id="check" ${attributes.join(' ')}>` +
    `${escaped(phrase(voice, 'Check whether this device trusts it'))}</button></p>` +
    `<p id="checked" role="status"></p><script src="${TRUST_PATHS.check}"></script>`
  );
};

/** No answer is read: that one came at all says that the certificate was taken. */
export const CHECK_SCRIPT = `'use strict';
const button = document.getElementById('check');
const said = document.getElementById('checked');
button.addEventListener('click', async () => {
  said.textContent = button.dataset.checking;
  try {
    const url = button.dataset.url + '${TRUST_PATHS.check}';
    await fetch(url, { mode: 'no-cors', cache: 'no-store' });
    said.textContent = button.dataset.trusted;
  } catch {
    said.textContent = button.dataset.refused;
  }
});
`;
