/**
 * How a device is made to trust the house's authority, in words. Of the steps, those for an iPad
 * follow Apple's support page on manually installed certificate profiles, and that Firefox takes
 * what the system trusts follows Mozilla's support page (from version 120); the rest is from
 * memory. The menus move from version to version, which the page says.
 */
import { message } from '#texts';

type Device = { readonly name: string; readonly steps: readonly string[] };

export const DEVICES: readonly Device[] = [
  {
    name: message('iPad and iPhone'),
    steps: [
      message('Open this page in Safari, tap the certificate above and allow the download.'),
      message('Open Settings. Tap the profile that was downloaded, and Install.'),
      message(
        'Compare the fingerprint under More Details with the one on this page, before you install.',
      ),
      message(
        'Open Settings, General, About, Certificate Trust Settings, and turn on full trust for ' +
          'Counterpoise. Without this step the device does not trust it.',
      ),
    ],
  },
  {
    name: message('Android'),
    steps: [
      message('Tap the certificate above and keep the file.'),
      message(
        'Open Settings and search for "CA certificate". It stands under Security, Encryption and ' +
          'credentials, Install a certificate.',
      ),
      message(
        'Choose CA certificate, read what the device warns of, and choose the file. The device ' +
          'needs a screen lock, and says from then on that its network may be watched.',
      ),
      message(
        'Look the certificate up under Trusted credentials, User, and compare its fingerprint.',
      ),
    ],
  },
  {
    name: message('Windows'),
    steps: [
      message('Open the certificate that was downloaded. Compare the fingerprint under Details.'),
      message(
        'Choose Install certificate, then Local machine, then Place all certificates in the ' +
          'following store, and there Trusted Root Certification Authorities.',
      ),
    ],
  },
  {
    name: message('Mac'),
    steps: [
      message('Open the certificate that was downloaded. It is added to the Keychain.'),
      message(
        'Find Counterpoise in the Keychain, open it, compare the fingerprint, and under Trust ' +
          'choose Always Trust.',
      ),
    ],
  },
  {
    name: message('Firefox'),
    steps: [
      message('From version 120 on it takes what the device trusts, on Windows, Mac and Android.'),
      message(
        'Else: Settings, Privacy and Security, View Certificates, Authorities, Import. Choose ' +
          'the file and trust it to identify websites.',
      ),
    ],
  },
];
