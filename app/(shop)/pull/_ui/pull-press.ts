/** The name under which a pull that was pressed and not answered is kept on the device. */
export const PULL_PRESS = 'pull';
