@echo off
rem Starts Lowfirst from its own image.
"%~dp0java.exe" -XX:+UseSerialGC -Xshare:auto "-XX:SharedArchiveFile=%~dp0..\app\lowfirst.jsa" -cp "%~dp0..\app\lowfirst.jar" lowfirst.cli.Main %*
