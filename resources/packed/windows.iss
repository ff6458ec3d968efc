; The installer for Windows, for Inno Setup 6: first "py run.py build", then
;   set BENCHWITNESS_VERSION=0.1.0   (what "benchwitness --version" says)
;   iscc resources\packed\windows.iss
; It installs for whoever runs it, or for all where that may be; shops are never touched.
#define Version GetEnv("BENCHWITNESS_VERSION")
#if Version == ""
  #error Set BENCHWITNESS_VERSION first.
#endif

[Setup]
AppId=Benchwitness
AppName=Benchwitness
AppVersion={#Version}
AppPublisher=Benchwitness
DefaultDirName={autopf}\Benchwitness
DisableProgramGroupPage=yes
LicenseFile=..\..\LICENSE
OutputDir=..\..\dist
OutputBaseFilename=benchwitness-{#Version}-setup
PrivilegesRequired=lowest
PrivilegesRequiredOverridesAllowed=dialog
ArchitecturesAllowed=x64compatible
ArchitecturesInstallIn64BitMode=x64compatible
Compression=lzma2
SolidCompression=yes
UninstallDisplayIcon={app}\benchwitness-window.exe

[Files]
Source: "..\..\dist\benchwitness\*"; DestDir: "{app}"; Flags: recursesubdirs ignoreversion

[InstallDelete]
; What an older version brought and this one has no more.
Type: filesandordirs; Name: "{app}\_internal"

[Tasks]
Name: "desktop"; Description: "Put it on the desktop too"; Flags: unchecked

[Icons]
Name: "{autoprograms}\Benchwitness"; Filename: "{app}\benchwitness-window.exe"
Name: "{autodesktop}\Benchwitness"; Filename: "{app}\benchwitness-window.exe"; Tasks: desktop
