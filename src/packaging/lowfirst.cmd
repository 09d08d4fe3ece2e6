@echo off
rem Starts Lowfirst from its own image.
"%~dp0java.exe" -XX:+UseSerialGC -XX:-UsePerfData -Xlog:disable -Xlog:all=off "-Dorg.sqlite.lib.path=%~dp0..\lib" -m lowfirst/lowfirst.cli.Main %*
