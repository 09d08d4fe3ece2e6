/** What has been done and found: progress, and the sheet that is signed. */
package lowfirst.sheet.progress;
