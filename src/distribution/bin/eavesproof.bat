@echo off
rem Starts Eavesproof with the Java of JAVA_HOME, else with the one on the PATH.
rem It makes no archive of loaded classes, as the shell script does: it starts without one.
setlocal
for %%h in ("%~dp0..") do set "EAVESPROOF_DIR=%%~fh"

if not defined JAVA_HOME goto onpath
set "EAVESPROOF_JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%EAVESPROOF_JAVA%" goto version
echo eavesproof: JAVA_HOME is "%JAVA_HOME%", and there is no bin\java.exe in it 1>&2
exit /b 70

:onpath
set "EAVESPROOF_JAVA="
for %%j in (java.exe) do set "EAVESPROOF_JAVA=%%~$PATH:j"
if defined EAVESPROOF_JAVA goto version
echo eavesproof: no Java found: install Java 17 or newer, or set JAVA_HOME 1>&2
exit /b 70

rem The file "release" beside a JDK names its version, as JAVA_VERSION="17.0.15".
rem Where there is none, Java itself refuses classes that are too new for it.
:version
set "EAVESPROOF_MAJOR="
for %%j in ("%EAVESPROOF_JAVA%") do set "EAVESPROOF_RELEASE=%%~dpj..\release"
if not exist "%EAVESPROOF_RELEASE%" goto run
for /f "usebackq tokens=1,2 delims==." %%a in ("%EAVESPROOF_RELEASE%") do if "%%a"=="JAVA_VERSION" set EAVESPROOF_MAJOR=%%b
if not defined EAVESPROOF_MAJOR goto run
set EAVESPROOF_MAJOR=%EAVESPROOF_MAJOR:"=%
if %EAVESPROOF_MAJOR% GEQ 17 goto run
echo eavesproof: Java 17 or newer is needed, and "%EAVESPROOF_JAVA%" is %EAVESPROOF_MAJOR% 1>&2
exit /b 70

:run
"%EAVESPROOF_JAVA%" ^
 -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn12m -Xshare:auto ^
 -Xlog:disable -Xlog:all=error:stderr ^
 -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 ^
 -Djava.awt.headless=true ^
 "-Deavesproof.home=%EAVESPROOF_DIR%" ^
 -cp "%EAVESPROOF_DIR%\lib\eavesproof.jar" eavesproof.app.cli.Main %*
exit /b %ERRORLEVEL%
