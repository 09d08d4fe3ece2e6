/** What datasheets and tables say of each part, load, path and rail, ready to be checked. */
package lowfirst.channel.data;
