/**
 * The words and numbers people read and write: the one bundle of messages, lengths in the user's unit, and the plain
 * text file of body measurements. The other core rooms only know codes and values.
 */
package easewright.text;
